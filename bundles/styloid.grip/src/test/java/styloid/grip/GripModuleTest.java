package styloid.grip;

import java.util.HashSet;
import java.util.Set;
import styloid.spi.TestModule;
import styloid.testkit.TestModuleContract;

class GripModuleTest extends TestModuleContract {
  @Override
  protected TestModule module() {
    return new GripModule();
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
}
