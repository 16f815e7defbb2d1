package styloid.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import styloid.model.Item;
import styloid.model.ItemId;
import styloid.spi.Setting;
import styloid.spi.TestModule;
import styloid.spi.Timer;
import styloid.testkit.TestModuleContract;

class GradingTest extends TestModuleContract {
  private final Grading grading = new Grading();

  @Override
  protected TestModule module() {
    return grading;
  }

  @Test
  void everyMotionIsHeldThreeSecondsAndLettingGoIsItsOwnAnswer() {
    int holds = 0;
    for (Item item : grading.definition().items()) {
      Optional<Timer> hold = grading.definition().timer(Timer.Kind.HOLD, item.id());
      assertEquals(item.id().value().endsWith("-hold"), hold.isPresent(), item.id()::value);
      if (hold.isPresent()) {
        holds++;
        ItemId time = new ItemId(item.id() + "-time");
        assertEquals(3, hold.get().seconds());
        assertEquals(
            Optional.of(new Timer.LetGo("gave-way", "yielded", Optional.of(time))),
            hold.get().letGo());
      }
    }
    assertEquals(grading.definition().groups().size(), holds);
  }

  @Test
  void wholeGradesArePresetUntilTheClinicChooses() {
    Setting scheme = grading.definition().setting("grading.scheme").orElseThrow();
    assertEquals(Optional.of("whole"), scheme.in(Map.of()));
    assertEquals(List.of("whole", "plus-minus"), scheme.codes());
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
