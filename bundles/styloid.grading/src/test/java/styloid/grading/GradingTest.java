package styloid.grading;

import java.util.HashSet;
import java.util.Set;
import styloid.spi.TestModule;
import styloid.testkit.TestModuleContract;

class GradingTest extends TestModuleContract {
  @Override
  protected TestModule module() {
    return new Grading();
  }

  /**
   * A grade stops asking once it is decided, so an absence among what is no longer needed may clear
   * a contradiction or end one; GradeRuleTest proves that it never lowers a grade. Roll-ups gather
   * what is graded.
   */
  @Override
  protected Set<String> restOnWhatIsThere() {
    HashSet<String> ids = new HashSet<>();
    module().definition().results().forEach(r -> ids.add(r.id().value()));
    return ids;
  }
}
