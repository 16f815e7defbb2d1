package styloid.grading;

import java.util.HashSet;
import java.util.Set;
import styloid.spi.TestModule;
import styloid.testkit.TestModuleContract;

class GradingTest extends TestModuleContract {
  private final Grading grading = new Grading();

  @Override
  protected TestModule module() {
    return grading;
  }

  /**
   * A grade stops asking once it is decided, so an absence among what is no longer needed may clear
   * a contradiction; GradeRuleTest and RecordedGradeTest prove that it never lowers or makes a
   * grade. Roll-ups gather what is graded.
   */
  @Override
  protected Set<String> restOnWhatIsThere() {
    HashSet<String> ids = new HashSet<>();
    module().definition().results().forEach(r -> ids.add(r.id().value()));
    return ids;
  }
}
