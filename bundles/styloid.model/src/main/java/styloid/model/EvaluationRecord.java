package styloid.model;

import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * All that is kept of one evaluation.
 *
 * @param definitions the tests as they were defined when used
 * @param drafts text under way in a field, not yet an entry
 */
public record EvaluationRecord(
    Evaluation evaluation,
    Ledger ledger,
    List<DefinitionText> definitions,
    Map<ItemKey, String> drafts) {
  public EvaluationRecord {
    Objects.requireNonNull(evaluation, "evaluation");
    Objects.requireNonNull(ledger, "ledger");
    definitions = List.copyOf(definitions);
    drafts = Map.copyOf(drafts);
  }
}
