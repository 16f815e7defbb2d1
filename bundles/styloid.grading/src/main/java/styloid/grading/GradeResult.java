package styloid.grading;

import static styloid.grading.GradingDefinition.ID;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import styloid.grading.Observed.Observation;
import styloid.model.Choice;
import styloid.model.Explanation;
import styloid.model.ItemKey;
import styloid.model.Message;
import styloid.model.Precaution;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.ResultKey;
import styloid.model.Source;
import styloid.model.Unit;

/** The grade of one motion: typed, else derived, with the observations and the rule it rests on. */
final class GradeResult {
  static final Source MRC =
      Source.verified(
          "Medical Research Council 1976, Aids to the Examination of the Peripheral Nervous System,"
              + " Memorandum 45");
  static final Source TEACHING_SCALE =
      Source.verified("Teaching scale 0 to 5 with plus and minus, as printed in teaching texts");

  private final Place place;
  private final ArrayList<Message> steps = new ArrayList<>();

  private GradeResult(Place place) {
    this.place = place;
  }

  static Result of(Place place) {
    return new GradeResult(place).result();
  }

  private Result result() {
    Decision decision = place.decision();
    explain();
    ResultKey key = place.result("grade");
    Optional<Grade> typed = place.typed();
    if (typed.isPresent()) {
      steps.add(Message.of(ID, "step.typed", typed.get().code()));
      return Result.computed(key, new Choice(typed.get().code()), why());
    } else if (decision instanceof Decision.Given given) {
      steps.add(rule(given.grade()));
      return Result.computed(key, new Choice(given.grade().code()), why());
    } else if (decision instanceof Decision.Contradiction contradiction) {
      Message reason = contradiction(place, contradiction);
      steps.add(reason);
      return Result.unavailable(key, reason, why());
    }
    Observation next = ((Decision.Needs) decision).next();
    Message reason = missing(place, next);
    steps.add(reason);
    return Result.incomplete(key, reason, List.of(place.key(next)), why());
  }

  private void explain() {
    steps.add(Message.of(ID, "step.scheme." + place.scheme().code(), GradeRule.VERSION));
    if (place.motion().criteria() == Criteria.RANGE_ONLY) {
      steps.add(Message.of(ID, "guide.criteria.range-only"));
    }
    Optional<BigDecimal> passive = place.measured("passive");
    steps.add(
        passive
            .map(p -> Message.of(ID, "step.passive", new Quantity(p, Unit.DEGREE)))
            .orElse(Message.of(ID, "step.no-passive")));
    for (Observation what : place.observations()) {
      ItemKey key = place.key(what);
      place.context().snapshot().choice(key).ifPresent(code -> steps.add(observed(place, what)));
      place
          .absence(what)
          .ifPresent(a -> steps.add(Message.of(ID, "step.absent", item(key), a.reason())));
    }
    for (Precaution limit : place.resistanceLimits()) {
      steps.add(
          limit.setBy().isBlank()
              ? Message.of(ID, "step.limit", limit.kind())
              : Message.of(ID, "step.limit-by", limit.kind(), limit.setBy()));
    }
  }

  /** The criterion that decided, in words. */
  private Message rule(Grade grade) {
    boolean ownWords =
        place.motion().criteria() == Criteria.RANGE_ONLY
            && (grade == Grade.G2 || grade == Grade.G2_MINUS);
    String scheme = ownWords ? "range-only" : place.scheme().code();
    return Message.of(ID, "rule." + scheme + "." + grade.code());
  }

  static Message contradiction(Place place, Decision.Contradiction both) {
    return Message.of(
        ID, "contradiction", observed(place, both.one()), observed(place, both.other()));
  }

  /** "Range against gravity: full". */
  private static Message observed(Place place, Observation what) {
    ItemKey key = place.key(what);
    String code = place.context().snapshot().choice(key).orElse("");
    return Message.of(
        ID, "step.observed", item(key), Message.of(ID, "choice." + key.item() + "." + code));
  }

  static Message missing(Place place, Observation next) {
    Message item = item(place.key(next));
    return place
        .absence(next)
        .map(a -> Message.of(ID, "incomplete.absent", item, a.reason()))
        .orElse(Message.of(ID, "incomplete.next", item));
  }

  private static Message item(ItemKey key) {
    return Message.of(ID, "item." + key.item());
  }

  private Explanation why() {
    Source scale = place.scheme() == Scheme.WHOLE ? MRC : TEACHING_SCALE;
    return new Explanation(
        steps, List.of(scale, Source.commonPractice()), "grade", Optional.empty());
  }
}
