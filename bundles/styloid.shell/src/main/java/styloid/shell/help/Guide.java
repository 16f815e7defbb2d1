package styloid.shell.help;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import styloid.model.Absence;
import styloid.model.Choice;
import styloid.model.Codes;
import styloid.model.Entry;
import styloid.model.ItemKey;
import styloid.model.Quantity;
import styloid.model.Value;
import styloid.session.OpenEvaluation;

/** What a newcomer has done of the guided evaluation, judged by the entries alone. */
final class Guide {
  /** In the order they are asked for; their words are {@code guide.<code>}. */
  enum Step {
    /** An answer is chosen by its number. */
    ANSWER,
    /** The same is recorded on both sides. */
    OTHER_SIDE,
    /** A place has no value, and why. */
    NO_VALUE,
    /** An entry is taken back. */
    UNDO,
    /** A number is typed. */
    NUMBER,
    /** The evaluation is closed; this ends the guide. */
    CLOSE;

    String code() {
      return Codes.of(this);
    }
  }

  private final Set<Step> done = EnumSet.noneOf(Step.class);

  /** Takes note of what the evaluation holds; what was done once stays done. */
  void see(OpenEvaluation open) {
    List<Entry> entries = open.ledger().entries();
    mark(Step.ANSWER, any(entries, Choice.class::isInstance));
    mark(Step.NO_VALUE, any(entries, Absence.class::isInstance));
    mark(Step.NUMBER, any(entries, Quantity.class::isInstance));
    mark(Step.UNDO, entries.stream().anyMatch(e -> e.value().isEmpty()));
    Set<ItemKey> filled =
        entries.stream()
            .filter(e -> e.value().isPresent())
            .map(Entry::key)
            .collect(Collectors.toSet());
    mark(
        Step.OTHER_SIDE,
        filled.stream().anyMatch(k -> !k.opposite().equals(k) && filled.contains(k.opposite())));
  }

  private static boolean any(List<Entry> entries, Predicate<Value> kind) {
    return entries.stream().flatMap(e -> e.value().stream()).anyMatch(kind);
  }

  private void mark(Step step, boolean seen) {
    if (seen) {
      done.add(step);
    }
  }

  /** The first step not done. */
  Step next() {
    return Stream.of(Step.values()).filter(s -> !done.contains(s)).findFirst().orElse(Step.CLOSE);
  }
}
