package styloid.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The feature file lists every bundle, and the suite holds what it lists and nothing else. */
class FeatureListTest {
  private static final Pattern OWN = Pattern.compile("\"styloid:(styloid\\.[a-z]+):");
  private static final Pattern ANY = Pattern.compile("\"id\"\\s*:\\s*\"[^:\"]+:([^:\"]+):");

  private static TreeSet<String> listed(Pattern pattern) {
    String feature = Project.text(Project.ROOT.resolve("features/full-evaluation.json"));
    Matcher matcher = pattern.matcher(feature.substring(feature.indexOf("\"bundles\"")));
    TreeSet<String> names = new TreeSet<>();
    while (matcher.find()) {
      names.add(matcher.group(1));
    }
    return names;
  }

  @Test
  void everyBundleOfTheProjectIsListed() {
    assertEquals(new TreeSet<>(Project.shippedBundles()), listed(OWN));
  }

  @Test
  void theSuiteHoldsWhatIsListedAndNothingElse() {
    TreeSet<String> held = new TreeSet<>();
    Project.list(Project.suite().resolve("bundles"))
        .forEach(jar -> held.add(jar.getFileName().toString().replaceAll("-[0-9].*", "")));
    assertEquals(listed(ANY), held);
  }
}
