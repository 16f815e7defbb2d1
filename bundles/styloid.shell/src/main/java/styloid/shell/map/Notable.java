package styloid.shell.map;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import styloid.model.Absence;
import styloid.model.Choice;
import styloid.model.Entry;
import styloid.model.Result;
import styloid.model.Value;
import styloid.plan.EvaluationSteps;
import styloid.spi.ResultDefinition;

/**
 * What is out of the ordinary: a result the definition calls so; a motion that hurts; a place that
 * could not be done or hurt too much; a value that was asked about or recorded in spite of a
 * precaution.
 */
final class Notable {
  private static final Set<Absence.Reason> REASONS =
      EnumSet.of(Absence.Reason.UNABLE, Absence.Reason.PAIN);

  private Notable() {}

  static boolean is(Entry entry) {
    if (entry.value().isEmpty()) {
      return false;
    }
    Value value = entry.value().get();
    boolean hurts =
        value instanceof Choice choice
            && choice.code().equals(EvaluationSteps.YES)
            && entry.key().item().value().endsWith(EvaluationSteps.PAIN);
    boolean impossible = value instanceof Absence absence && REASONS.contains(absence.reason());
    return hurts || impossible || entry.confirmed() || entry.override().isPresent();
  }

  static boolean is(Result result, Optional<ResultDefinition> definition) {
    return definition.isPresent()
        && result
            .value()
            .filter(v -> v instanceof Choice c && definition.get().notable().contains(c.code()))
            .isPresent();
  }
}
