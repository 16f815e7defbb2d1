package styloid.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each built manifest's imports and exports equal the checked-in list, so that every new import
 * shows in review. The failure prints the list as it should then be checked in.
 */
class ManifestTest {
  private static final Path LISTS =
      Project.ROOT.resolve("features/styloid.checks/src/test/resources/styloid/checks/manifests");

  /** What every Java program has goes without saying. */
  private static final Set<String> BASE = Object.class.getModule().getPackages();

  static List<String> bundles() {
    return Project.shippedBundles();
  }

  @ParameterizedTest
  @MethodSource("bundles")
  void importsAndExportsAreAsReviewed(String bundle) {
    Path jar =
        Project.list(Project.suite().resolve("bundles")).stream()
            .filter(f -> f.getFileName().toString().startsWith(bundle + "-"))
            .findFirst()
            .orElseThrow(() -> new AssertionError(bundle + " is not in the suite"));
    Path reviewed = LISTS.resolve(bundle + ".txt");
    assertTrue(Files.exists(reviewed), () -> "no list for " + bundle + ":\n" + lines(jar));
    assertEquals(Project.text(reviewed).strip(), lines(jar));
  }

  private static String lines(Path jar) {
    Manifests manifest = Manifests.of(jar);
    ArrayList<String> lines = new ArrayList<>();
    manifest.packages("Export-Package").forEach(p -> lines.add("export " + p));
    manifest.packages("Import-Package").stream()
        .filter(p -> !BASE.contains(p))
        .forEach(p -> lines.add("import " + p));
    return String.join("\n", lines);
  }
}
