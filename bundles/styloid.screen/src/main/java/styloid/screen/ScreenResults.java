package styloid.screen;

import static styloid.screen.ScreenDefinition.ADD;
import static styloid.screen.ScreenDefinition.FULL;
import static styloid.screen.ScreenDefinition.ID;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import styloid.model.Choice;
import styloid.model.Digit;
import styloid.model.Explanation;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.Message;
import styloid.model.Outcome;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.ResultId;
import styloid.model.ResultKey;
import styloid.model.Side;
import styloid.model.Snapshot;
import styloid.model.Source;
import styloid.model.Unit;

/** What follows from a screen: how much of an area falls short, and what goes on to be measured. */
final class ScreenResults {
  private static final String SUMMARY = "screen-summary";
  private static final String FORWARD = "screen-put-forward";

  private final Snapshot snapshot;

  ScreenResults(Snapshot snapshot) {
    this.snapshot = snapshot;
  }

  List<Result> all() {
    ArrayList<Result> results = new ArrayList<>();
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      ArrayList<Message> forward = new ArrayList<>();
      ArrayList<ItemKey> open = new ArrayList<>();
      for (Area area : Area.all()) {
        results.add(notFull(area, side));
        results.add(painful(area, side));
        for (String motion : area.motions()) {
          Result next = next(motion, side);
          results.add(next);
          note(next, motion, forward, open);
        }
      }
      results.add(putForward(side, forward, open));
    }
    return results;
  }

  private Result notFull(Area area, Side side) {
    ArrayList<Message> found = new ArrayList<>();
    ArrayList<ItemKey> missing = new ArrayList<>();
    for (String motion : area.motions()) {
      ItemKey key = key(motion, side);
      Optional<String> seen = snapshot.choice(key);
      if (seen.isEmpty()) {
        missing.add(key);
      } else if (!seen.get().equals(FULL)) {
        found.add(answer(key, seen.get()));
      }
    }
    return counted(area, side, "-not-full", "step.not-full", found, missing);
  }

  /** Full motion is taken as free of pain unless pain was recorded: it is not asked for then. */
  private Result painful(Area area, Side side) {
    ArrayList<Message> found = new ArrayList<>();
    ArrayList<ItemKey> missing = new ArrayList<>();
    for (String motion : area.motions()) {
      ItemKey pain = key(ScreenDefinition.pain(motion), side);
      Optional<String> seen = snapshot.choice(key(motion, side));
      Optional<String> hurts = snapshot.choice(pain);
      if (hurts.filter("yes"::equals).isPresent()) {
        found.add(name(key(motion, side)));
      } else if (seen.isEmpty()) {
        missing.add(key(motion, side));
      } else if (hurts.isEmpty() && (!seen.get().equals(FULL) || absent(pain))) {
        missing.add(pain);
      }
    }
    return counted(area, side, "-painful", "step.painful", found, missing);
  }

  private Result counted(
      Area area,
      Side side,
      String suffix,
      String stepKey,
      List<Message> found,
      List<ItemKey> missing) {
    ResultKey key = result(area.id() + suffix, side);
    ArrayList<Message> steps = new ArrayList<>();
    steps.add(Message.of(ID, stepKey, found.size(), area.motions().size()));
    steps.addAll(found);
    if (!missing.isEmpty()) {
      steps.set(0, Message.of(ID, "step.so-far", found.size(), missing.size()));
      return Result.incomplete(
          key, Message.of(ID, "incomplete.count", missing.size()), missing, why(steps, SUMMARY));
    }
    return Result.computed(key, number(found.size()), why(steps, SUMMARY));
  }

  private Result next(String motion, Side side) {
    ItemKey key = key(motion, side);
    ItemKey decision = key(ScreenDefinition.decision(motion), side);
    ItemKey pain = key(ScreenDefinition.pain(motion), side);
    ResultKey result = result(motion + "-next", side);
    Optional<String> seen = snapshot.choice(key);
    boolean hurts = snapshot.choice(pain).filter("yes"::equals).isPresent();
    ArrayList<Message> steps = new ArrayList<>();
    seen.ifPresent(s -> steps.add(answer(key, s)));
    if (hurts) {
      steps.add(Message.of(ID, "step.hurts", name(key)));
    }
    Optional<String> word = snapshot.choice(decision);
    if (word.isPresent()) {
      boolean added = word.get().equals(ADD);
      steps.add(Message.of(ID, added ? "step.added" : "step.dropped", name(key)));
      return Result.computed(result, new Choice(added ? "added" : "dropped"), why(steps, FORWARD));
    }
    if (absent(decision)) {
      return open(result, Message.of(ID, "incomplete.decision", name(key)), decision, steps);
    }
    if (hurts || seen.filter(s -> !s.equals(FULL)).isPresent()) {
      steps.add(Message.of(ID, "step.forward"));
      return Result.computed(result, new Choice("put-forward"), why(steps, FORWARD));
    }
    if (seen.isEmpty()) {
      return open(result, notSeen(key), key, steps);
    }
    if (absent(pain)) {
      return open(result, Message.of(ID, "incomplete.pain", name(key)), pain, steps);
    }
    steps.add(Message.of(ID, "step.full"));
    return Result.computed(result, new Choice("not-needed"), why(steps, FORWARD));
  }

  private Message notSeen(ItemKey key) {
    return snapshot
        .absence(key)
        .map(a -> Message.of(ID, "incomplete.absent", name(key), a.reason()))
        .orElse(Message.of(ID, "incomplete.motion", name(key)));
  }

  private static Result open(
      ResultKey result, Message reason, ItemKey missing, List<Message> steps) {
    steps.add(reason);
    return Result.incomplete(result, reason, List.of(missing), why(steps, FORWARD));
  }

  private void note(Result next, String motion, List<Message> forward, List<ItemKey> open) {
    if (next.outcome() instanceof Outcome.Incomplete incomplete) {
      open.addAll(incomplete.missing());
    }
    next.value()
        .filter(v -> v.equals(new Choice("put-forward")) || v.equals(new Choice("added")))
        .ifPresent(v -> forward.add(name(key(motion, next.key().side()))));
  }

  private Result putForward(Side side, List<Message> forward, List<ItemKey> open) {
    ResultKey key = result("put-forward", side);
    ArrayList<Message> steps = new ArrayList<>();
    steps.add(Message.of(ID, "step.put-forward", forward.size()));
    steps.addAll(forward);
    if (!open.isEmpty()) {
      return Result.incomplete(
          key, Message.of(ID, "incomplete.count", open.size()), open, why(steps, FORWARD));
    }
    return Result.computed(key, number(forward.size()), why(steps, FORWARD));
  }

  private boolean absent(ItemKey key) {
    return snapshot.absence(key).isPresent();
  }

  private static Quantity number(int count) {
    return Quantity.of(Integer.toString(count), Unit.COUNT);
  }

  private static Message answer(ItemKey key, String code) {
    Message word = Message.of(ID, "choice." + key.item() + "." + code);
    return Message.of(ID, "step.answer", name(key), word);
  }

  private static Message name(ItemKey key) {
    return Message.of(ID, "item." + key.item());
  }

  private static ItemKey key(String item, Side side) {
    return new ItemKey(ID, new ItemId(item), side, Digit.NONE, 1);
  }

  private static ResultKey result(String id, Side side) {
    return new ResultKey(ID, new ResultId(id), side, Digit.NONE);
  }

  private static Explanation why(List<Message> steps, String rule) {
    return new Explanation(steps, List.of(Source.commonPractice()), rule, Optional.empty());
  }
}
