package styloid.checks;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** No test module knows another; no packages depend on each other in a circle. */
class ModuleIsolationTest {
  private static final List<String> MODULES =
      List.of("styloid.screen", "styloid.grading", "styloid.goniometry", "styloid.grip");

  private static final JavaClasses ALL =
      new ClassFileImporter()
          .importPaths(Project.bundles().stream().map(Project::classes).toArray(Path[]::new));

  @Test
  void noTestModuleUsesAnother() {
    for (String module : MODULES) {
      String[] others =
          MODULES.stream().filter(m -> !m.equals(module)).map(m -> m + "..").toArray(String[]::new);
      noClasses()
          .that()
          .resideInAPackage(module + "..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(others)
          .because("the patient context is the only meeting place")
          .check(ALL);
    }
  }

  @Test
  void noPackagesDependOnEachOtherInACircle() {
    slices().matching("styloid.(**)").should().beFreeOfCycles().check(ALL);
  }
}
