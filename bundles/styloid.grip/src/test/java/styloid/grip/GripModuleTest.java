package styloid.grip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import styloid.model.SourceStatus;
import styloid.spi.Group;
import styloid.spi.TestModule;
import styloid.spi.Timer;
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
  void everyMeasureRestsAMinuteBetweenTrialsOfAHand() {
    for (Measure measure : Measure.values()) {
      Timer rest = module.definition().timer(Timer.Kind.REST, measure.item()).orElseThrow();
      assertEquals(60, rest.seconds());
      assertEquals(SourceStatus.VERIFIED, rest.source().status());
    }
  }

  @Test
  void handsAlternateTrialByTrial() {
    for (Measure measure : Measure.values()) {
      Group group = module.definition().groupOf(measure.item()).orElseThrow();
      assertEquals(Group.Walk.ALTERNATING, group.walk());
      assertEquals(3, module.definition().item(measure.item()).orElseThrow().trials());
    }
  }

  @Test
  void theClinicChoosesAmongTheTablesWithRowsOfTheMeasure() {
    assertEquals(
        List.of("mathiowetz-1985", "palmar-decade"),
        module.definition().setting("grip.norm.palmar").orElseThrow().codes());
    List<String> forGrip = module.definition().setting("grip.norm").orElseThrow().codes();
    assertEquals(5, forGrip.size());
    assertFalse(forGrip.contains("palmar-decade"));
    assertTrue(module.definition().setting("grip.norm.tip").isEmpty(), "only one table has it");
  }

  @Test
  void twoModulesAreDefinedAlike() {
    assertEquals(new GripModule().definition(), new GripModule().definition());
  }
}
