package styloid.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PedalsTest {
  private static final Pedals BOTH =
      new Pedals(Optional.of(KeyCode.PAGE_DOWN), Optional.of(KeyCode.F13));

  @ParameterizedTest
  @CsvSource({
    "PAGE_DOWN, false, ENTER",
    "PAGE_DOWN, true, ",
    "F13, false, TIMER",
    "PAGE_UP, false, ",
    "ENTER, false, "
  })
  void aPedalDoesWhatItsKeyWasChosenFor(KeyCode key, boolean control, Command command) {
    assertEquals(Optional.ofNullable(command), BOTH.command(key, control));
    assertEquals(Optional.empty(), Pedals.NONE.command(key, control));
  }

  @Test
  void noKeyOfferedMeansSomethingElseInTheForm() {
    assertTrue(
        Pedals.OFFERED.stream().allMatch(key -> Command.pressed(key, false, false).isEmpty()));
  }
}
