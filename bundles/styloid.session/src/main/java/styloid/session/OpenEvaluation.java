package styloid.session;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import styloid.model.Finding;
import styloid.model.ItemKey;
import styloid.model.Ledger;
import styloid.model.PatientContext;
import styloid.model.TestId;
import styloid.plan.Plan;
import styloid.spi.TestDefinition;

/**
 * An evaluation as it stands, immutable.
 *
 * @param context with results as far as they are calculated
 * @param tests the tests it uses, in order; one whose module is missing as it was stored
 * @param withoutModule ids in {@code tests} that no module answers for; shown read-only
 * @param faults modules that failed in this evaluation
 * @param unsaved keys whose latest entry is not on disk yet
 * @param drafts text under way in fields
 * @param calculating whether results are behind the entries
 * @param savingFault why the latest entries could not be stored, in words, while that lasts
 * @param order the steps still to do in their best order; it follows the results a little later,
 *     and is empty before the first time and in an evaluation that is closed to entries
 */
public record OpenEvaluation(
    PatientContext context,
    Ledger ledger,
    List<TestDefinition> tests,
    Set<TestId> withoutModule,
    List<ModuleFault> faults,
    List<Finding> findings,
    Set<ItemKey> unsaved,
    Map<ItemKey, String> drafts,
    boolean canUndo,
    boolean canRedo,
    boolean calculating,
    Optional<String> savingFault,
    Optional<Plan> order) {
  public OpenEvaluation {
    Objects.requireNonNull(context, "context");
    Objects.requireNonNull(ledger, "ledger");
    tests = List.copyOf(tests);
    withoutModule = Set.copyOf(withoutModule);
    faults = List.copyOf(faults);
    findings = List.copyOf(findings);
    unsaved = Set.copyOf(unsaved);
    drafts = Map.copyOf(drafts);
    Objects.requireNonNull(savingFault, "savingFault");
    Objects.requireNonNull(order, "order");
  }
}
