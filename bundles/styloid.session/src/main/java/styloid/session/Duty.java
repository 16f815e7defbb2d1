package styloid.session;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import styloid.model.Absence;
import styloid.model.InSpite;
import styloid.model.ItemKey;
import styloid.model.PatientContext;
import styloid.model.Precaution;
import styloid.model.Therapist;
import styloid.model.TherapistId;
import styloid.model.Value;
import styloid.spi.TestDefinition;
import styloid.spi.Withheld;

/** Who works at present, and what they may record under the precautions in force. */
final class Duty {
  private volatile Optional<Therapist> worker = Optional.empty();

  Optional<Therapist> worker() {
    return worker;
  }

  void workAs(Therapist who) {
    worker = Optional.of(who);
  }

  private boolean licensed() {
    return worker.filter(Therapist::licensed).isPresent();
  }

  /** What entries are signed with: who works, or the evaluation's therapist while nobody said. */
  TherapistId signature(PatientContext context) {
    return worker.map(Therapist::id).orElseGet(() -> context.evaluation().therapist());
  }

  /**
   * What is to be kept of a value. An absence needs no leave: that nothing was done is always true.
   *
   * @param reason why it is done although withheld; not kept where nothing withholds it
   * @throws IllegalArgumentException when a precaution withholds the item and no reason is given,
   *     or one that is blank or too long
   * @throws IllegalStateException when who works is not licensed to override
   */
  UndoStack.Content content(
      TestDefinition test,
      PatientContext context,
      ItemKey key,
      Value value,
      boolean confirmed,
      Optional<String> reason) {
    List<Precaution> precautions =
        value instanceof Absence ? List.of() : withholding(test, context, key);
    Optional<InSpite> override = Optional.empty();
    if (!precautions.isEmpty()) {
      String setBy = precautions.stream().map(Precaution::setBy).collect(Collectors.joining(", "));
      override =
          Optional.of(
              reason
                  .map(why -> new InSpite(why, precautions))
                  .orElseThrow(() -> new IllegalArgumentException(key + " is withheld: " + setBy)));
      if (!licensed()) {
        throw new IllegalStateException(
            key + " is withheld: " + setBy + "; only a licensed therapist may override that");
      }
    }
    return new UndoStack.Content(Optional.of(value), confirmed, override);
  }

  private static List<Precaution> withholding(
      TestDefinition test, PatientContext context, ItemKey key) {
    return Withheld.by(
        test.groupOf(key.item()).orElseThrow(),
        test.item(key.item()).orElseThrow(),
        key,
        context.precautions(),
        context.evaluation().date());
  }

  /** Whether what was taken back, or stood before, may be recorded again by who works. */
  boolean mayRepeat(UndoStack.Content content) {
    return content.override().isEmpty() || licensed();
  }
}
