package styloid.checks;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Model, SPI and modules know no clock, chance, files, network, threads or hidden state. */
class PureCoreTest {
  private static final List<String> CORE =
      List.of(
          "styloid.model",
          "styloid.spi",
          "styloid.screen",
          "styloid.grading",
          "styloid.goniometry",
          "styloid.grip",
          "styloid.finding",
          "styloid.plan");

  private static final JavaClasses CLASSES =
      new ClassFileImporter().importPaths(CORE.stream().map(Project::classes).toArray(Path[]::new));

  @Test
  void nothingReadsTheClockTheDefaultLocaleOrTheDefaultZone() {
    Set<String> forbidden = Set.of("now", "currentTimeMillis", "nanoTime", "systemDefault");
    ArrayList<String> breaches = new ArrayList<>();
    for (JavaClass one : CLASSES) {
      for (JavaMethodCall call : one.getMethodCallsFromSelf()) {
        String name = call.getTarget().getName();
        String owner = call.getTargetOwner().getFullName();
        boolean localeless =
            owner.equals("java.util.Locale") && name.equals("getDefault")
                || owner.equals("java.lang.String")
                    && (name.equals("toLowerCase") || name.equals("toUpperCase"))
                    && call.getTarget().getRawParameterTypes().isEmpty()
                || owner.equals("java.lang.String")
                    && (name.equals("format") || name.equals("formatted"))
                    && call.getTarget().getRawParameterTypes().stream()
                        .noneMatch(t -> t.getFullName().equals("java.util.Locale"));
        boolean clock =
            forbidden.contains(name)
                && (owner.startsWith("java.time") || owner.equals("java.lang.System"));
        if (localeless || clock) {
          breaches.add(call.getDescription());
        }
      }
    }
    assertTrue(breaches.isEmpty(), () -> String.join("\n", breaches));
  }

  @Test
  void nothingUsesChanceFilesNetworkOrThreads() {
    ArchRule rule =
        noClasses()
            .should()
            .dependOnClassesThat()
            .haveFullyQualifiedName("java.util.Random")
            .orShould()
            .dependOnClassesThat()
            .haveFullyQualifiedName("java.util.concurrent.ThreadLocalRandom")
            .orShould()
            .dependOnClassesThat()
            .haveFullyQualifiedName("java.io.File")
            .orShould()
            .dependOnClassesThat()
            .haveFullyQualifiedName("java.nio.file.Files")
            .orShould()
            .dependOnClassesThat()
            .resideInAPackage("java.net..")
            .orShould()
            .dependOnClassesThat()
            .haveFullyQualifiedName("java.lang.Thread")
            .orShould()
            .dependOnClassesThat()
            .resideInAPackage("java.util.concurrent.locks..")
            .because("the same input must give the same output, everywhere");
    rule.check(CLASSES);
  }

  @Test
  void noStaticFieldCanChange() {
    fields()
        .that()
        .areStatic()
        .and()
        .doNotHaveName("$SWITCH_TABLE$")
        .should()
        .beFinal()
        .because("hidden state makes results depend on what was asked before")
        .check(CLASSES);
  }
}
