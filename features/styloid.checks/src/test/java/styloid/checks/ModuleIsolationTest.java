package styloid.checks;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** No test module knows another; no packages depend on each other in a circle. */
class ModuleIsolationTest {
  private static final JavaClasses ALL =
      new ClassFileImporter()
          .importPaths(Project.bundles().stream().map(Project::classes).toArray(Path[]::new));

  private static final JavaClasses MODULES =
      new ClassFileImporter()
          .importPaths(
              Project.classes("styloid.screen"),
              Project.classes("styloid.grading"),
              Project.classes("styloid.goniometry"),
              Project.classes("styloid.grip"));

  @Test
  void noTestModuleUsesAnother() {
    slices()
        .matching("styloid.(*)..")
        .should()
        .notDependOnEachOther()
        .because("the patient context is the only meeting place")
        .check(MODULES);
  }

  @Test
  void noPackagesDependOnEachOtherInACircle() {
    slices().matching("styloid.(**)").should().beFreeOfCycles().check(ALL);
  }
}
