package styloid.grip;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import styloid.spi.TestModule;
import styloid.testkit.TestModuleContract;

class GripModuleTest extends TestModuleContract {
  /**
   * One a test: reading the norm tables anew for each of thousands of results would take minutes.
   */
  private final GripModule module = new GripModule();

  @Override
  protected TestModule module() {
    return module;
  }

  /** The norms give each hand figures of its own. */
  @Override
  protected Set<String> dependOnHand() {
    HashSet<String> ids = new HashSet<>();
    for (Measure measure : Measure.values()) {
      for (String kind : new String[] {"z-", "percentile-", "band-"}) {
        ids.add(kind + measure.code());
      }
    }
    return ids;
  }

  @Test
  void twoModulesAreDefinedAlike() {
    assertEquals(new GripModule().definition(), new GripModule().definition());
  }
}
