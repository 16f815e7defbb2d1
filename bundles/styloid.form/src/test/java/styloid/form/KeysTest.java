package styloid.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import styloid.model.ItemKind;

class KeysTest {
  @Test
  void answersAreChosenByPlace() {
    ChoiceKeys keys = ChoiceKeys.of(ItemKind.Choices.of("full", "limited", "unable"));
    assertEquals(List.of("1", "2", "3"), keys.keys());
    assertEquals(Optional.of("limited"), keys.code("2"));
    assertFalse(keys.canGrow("2"));
    assertFalse(keys.begins("4"));
  }

  @Test
  void gradesAreTypedAsTheyAre() {
    ChoiceKeys keys = ChoiceKeys.of(ItemKind.Choices.of("0", "1", "2", "2+", "3-", "3"));
    assertEquals(Optional.of("0"), keys.code("0"));
    assertTrue(keys.canGrow("2"));
    assertEquals(Optional.of("2+"), keys.code("2+"));
    assertEquals(Optional.of("3-"), keys.code("3-"));
    assertFalse(keys.canGrow("1"));
  }

  @Test
  void aScaleToTenIsTypedAsItIs() {
    ChoiceKeys keys = ChoiceKeys.of(ItemKind.Choices.of("0", "1", "2", "9", "10"));
    assertEquals(Optional.of("2"), keys.code("2"));
    assertEquals(Optional.of("10"), keys.code("10"));
    assertTrue(keys.canGrow("1"));
  }

  @Test
  void theTenthAnswerMakesTheFirstWait() {
    ChoiceKeys keys =
        ChoiceKeys.of(ItemKind.Choices.of("a", "b", "c", "d", "e", "f", "g", "h", "i", "j"));
    assertTrue(keys.canGrow("1"));
    assertFalse(keys.canGrow("2"));
    assertEquals(Optional.of("j"), keys.code("10"));
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          ENTER, false, false, ENTER
          TAB, false, false, NEXT
          TAB, false, true, PREVIOUS
          UP, false, false, PREVIOUS
          ESCAPE, false, false, BACK
          F1, false, false, KEYS
          F2, false, false, WHY
          F7, false, false, OTHER_SIDE
          F8, false, false, NO_VALUE
          Z, true, false, UNDO
          Z, true, true, REDO
          Y, true, false, REDO
          """)
  void keysWithoutCharacter(KeyCode key, boolean control, boolean shift, Command command) {
    assertEquals(Optional.of(command), Command.pressed(key, control, shift));
  }

  @ParameterizedTest
  @CsvSource({"Z, false", "Y, false", "DIGIT5, false", "LEFT, false"})
  void otherKeysStayWithTheField(KeyCode key, boolean control) {
    assertEquals(Optional.empty(), Command.pressed(key, control, false));
  }

  @ParameterizedTest
  @CsvSource({"*, NO_VALUE", "/, OTHER_SIDE", "?, KEYS", "w, WHY", "u, UNIT"})
  void charactersCommandOutsideOfTextOnly(String character, Command command) {
    assertEquals(Optional.of(command), Command.typed(character, false));
    assertEquals(Optional.empty(), Command.typed(character, true));
  }

  @ParameterizedTest
  @EnumSource(Command.class)
  void everyCommandIsExplained(Command command) {
    assertTrue(FormView.labels().find("en", "keys." + command.code()).isPresent());
    assertTrue(FormView.labels().find("en", "keys." + command.code() + ".key").isPresent());
  }
}
