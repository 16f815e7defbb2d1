package styloid.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import styloid.model.Absence;
import styloid.model.Choice;
import styloid.model.Digit;
import styloid.model.ItemKey;
import styloid.model.Quantity;
import styloid.model.Side;
import styloid.model.Unit;

/** A real scene, driven by key events alone. */
class FormWindowTest {
  private Memory memory;
  private FormView form;
  private Stage stage;

  @BeforeEach
  void open() {
    Window.start();
    memory =
        new Memory(
            SampleTest.definition(),
            SampleTest.context(Set.of(Side.LEFT), SampleTest.noResistance(Side.LEFT)));
    form = Window.on(() -> new FormView(memory, SampleTest.texts()));
    memory.onChange(this::show);
    Window.run(this::show);
    stage = Window.show(form, 900, 700);
    Window.run(form::focusStart);
    Window.settle();
  }

  @AfterEach
  void close() {
    Window.run(stage::hide);
  }

  private void show() {
    form.show(memory.state(), SampleTest.definition().groups());
  }

  private void press(KeyCode code) {
    fire(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, false, false, false));
  }

  private void type(String text) {
    for (char c : text.toCharArray()) {
      String character = String.valueOf(c);
      fire(
          new KeyEvent(
              KeyEvent.KEY_TYPED, character, "", KeyCode.UNDEFINED, false, false, false, false));
    }
  }

  private void fire(KeyEvent event) {
    Window.run(() -> Event.fireEvent(stage.getScene().getFocusOwner(), event));
    Window.settle();
  }

  private ItemKey at() {
    return Window.on(() -> form.current().get());
  }

  private void goTo(ItemKey key) {
    Window.run(() -> form.focusOn(key));
    Window.settle();
  }

  private static ItemKey finger(String item, Digit digit) {
    return new ItemKey(SampleTest.ID, new styloid.model.ItemId(item), Side.RIGHT, digit, 1);
  }

  @Test
  void answersAndTheirFollowersAreWalkedByDigitAlone() {
    assertEquals(SampleTest.key("flexion", Side.RIGHT), at());
    type("12");
    assertEquals(SampleTest.key("flexion-pain", Side.LEFT), at());
    type("2");
    assertEquals(SampleTest.key("extension", Side.RIGHT), at());
    assertEquals(
        Optional.of(new Choice("limited")), memory.value(SampleTest.key("flexion", Side.LEFT)));
    assertEquals(
        Optional.of(new Choice("yes")), memory.value(SampleTest.key("flexion-pain", Side.LEFT)));
  }

  private static ItemKey power(Side side, int trial) {
    return new ItemKey(SampleTest.ID, new styloid.model.ItemId("power"), side, Digit.NONE, trial);
  }

  @Test
  void aSetThatTurnsToAnotherUnitIsAskedAboutOnce() {
    goTo(power(Side.RIGHT, 1));
    type("38.5");
    press(KeyCode.ENTER);
    assertEquals(power(Side.LEFT, 1), at());
    type("80lb");
    press(KeyCode.ENTER);
    assertEquals(power(Side.LEFT, 1), at());
    assertTrue(memory.value(power(Side.LEFT, 1)).isEmpty());
    assertTrue(
        Window.on(() -> form.lookupAll(".note-question .note-text")).stream()
            .map(label -> ((Label) label).getText())
            .anyMatch(text -> text.contains("The other readings of this set are in kg.")));
    press(KeyCode.ENTER);
    assertEquals(
        Optional.of(Quantity.of("80", Unit.POUND_FORCE)), memory.value(power(Side.LEFT, 1)));
    assertTrue(memory.entries.get(1).confirmed());
    type("37.5 kg");
    press(KeyCode.ENTER);
    type("81 lb");
    press(KeyCode.ENTER);
    assertEquals(power(Side.RIGHT, 3), at());
    assertEquals(
        Optional.of(Quantity.of("81", Unit.POUND_FORCE)), memory.value(power(Side.LEFT, 2)));
    assertEquals(
        Optional.of(Quantity.of("38.5", Unit.KILOGRAM_FORCE)), memory.value(power(Side.RIGHT, 1)));
  }

  @Test
  void anotherUnitUnderARecordedReadingIsANewReadingStillToBeKept() {
    goTo(power(Side.RIGHT, 1));
    type("38.5");
    press(KeyCode.ENTER);
    goTo(power(Side.RIGHT, 1));
    type("u");
    assertEquals(
        Optional.of(Quantity.of("38.5", Unit.KILOGRAM_FORCE)), memory.value(power(Side.RIGHT, 1)));
    assertEquals("38.5", memory.drafts.get(power(Side.RIGHT, 1)));
    press(KeyCode.ENTER);
    assertEquals(
        Optional.of(Quantity.of("38.5", Unit.POUND_FORCE)), memory.value(power(Side.RIGHT, 1)));
  }

  @Test
  void numbersAreRecordedByEnterAndEntryGoesDownTheFinger() {
    goTo(finger("mp", Digit.INDEX));
    type("85");
    press(KeyCode.ENTER);
    assertEquals(finger("pip", Digit.INDEX), at());
    assertEquals(
        Optional.of(Quantity.of("85", Unit.DEGREE)), memory.value(finger("mp", Digit.INDEX)));
  }

  @Test
  void anUnusualNumberIsKeptByASecondEnter() {
    goTo(finger("mp", Digit.INDEX));
    type("170");
    press(KeyCode.ENTER);
    assertEquals(finger("mp", Digit.INDEX), at());
    assertTrue(memory.entries.isEmpty());
    press(KeyCode.ENTER);
    assertTrue(memory.entries.get(0).confirmed());
    assertEquals(finger("pip", Digit.INDEX), at());
  }

  @Test
  void leavingTheFieldByOtherMeansCommits() {
    goTo(finger("mp", Digit.INDEX));
    type("85");
    goTo(finger("mp", Digit.RING));
    assertEquals(
        Optional.of(Quantity.of("85", Unit.DEGREE)), memory.value(finger("mp", Digit.INDEX)));
  }

  @Test
  void absenceTakesOneKeyAndItsReason() {
    goTo(finger("mp", Digit.INDEX));
    type("*4");
    assertEquals(
        Optional.of(new Absence(Absence.Reason.PAIN)), memory.value(finger("mp", Digit.INDEX)));
    assertEquals(finger("pip", Digit.INDEX), at());
  }

  @Test
  void aWithheldPlaceTakesItsAbsenceByOneKeyAndNothingElse() {
    ItemKey hold = SampleTest.key("hold", Side.LEFT);
    Window.run(() -> memory.record(SampleTest.key("range", Side.LEFT), new Choice("full"), false));
    goTo(hold);
    type("1");
    press(KeyCode.ESCAPE);
    assertEquals(Optional.empty(), memory.value(hold));
    type("*");
    assertEquals(Optional.of(new Absence(Absence.Reason.PRECAUTION)), memory.value(hold));
  }

  @Test
  void otherSideAndKeysAndUndoAreOneKeyEach() {
    type("/");
    assertEquals(SampleTest.key("flexion", Side.LEFT), at());
    type("?");
    fire(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.Z, false, true, false, false));
    assertEquals(List.of("keys", "undo"), memory.calls);
  }

  @Test
  void theUnitGoesOnByOneKeyAndIsRecorded() {
    ItemKey grip =
        new ItemKey(SampleTest.ID, new styloid.model.ItemId("power"), Side.RIGHT, Digit.NONE, 1);
    goTo(grip);
    type("u");
    type("66");
    press(KeyCode.ENTER);
    assertEquals(Optional.of(Quantity.of("66", Unit.POUND_FORCE)), memory.value(grip));
    assertEquals(grip.opposite(), at());
    type("60");
    press(KeyCode.ENTER);
    assertEquals(Optional.of(Quantity.of("60", Unit.POUND_FORCE)), memory.value(grip.opposite()));
  }

  @Test
  void theWalkLeavesThePageAtItsEnd() {
    goTo(new ItemKey(SampleTest.ID, new styloid.model.ItemId("power"), Side.LEFT, Digit.NONE, 3));
    press(KeyCode.ENTER);
    assertEquals(List.of("next page"), memory.calls);
  }

  @Test
  void everyFocusableNodeSaysItsSide() {
    List<String> silent = new ArrayList<>();
    Window.run(() -> collect(form, silent));
    assertEquals(List.of(), silent);
  }

  private static void collect(Node node, List<String> silent) {
    if (node.isFocusTraversable()) {
      String name = String.valueOf(node.getAccessibleText());
      boolean side = name.contains("Right") || name.contains("Left");
      if (!side && !name.contains("Instrument")) {
        silent.add(node + " " + name);
      }
    }
    if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> collect(child, silent));
    }
  }

  @Test
  void aDraftFromBeforeShowsAgain() {
    memory.drafts.put(finger("mp", Digit.INDEX), "8");
    FormView again = Window.on(() -> new FormView(memory, SampleTest.texts()));
    Window.run(() -> again.show(memory.state(), SampleTest.definition().groups()));
    Stage second = Window.show(again, 900, 700);
    Window.run(() -> again.focusOn(finger("mp", Digit.INDEX)));
    Window.settle();
    Node owner = Window.on(() -> second.getScene().getFocusOwner());
    assertEquals("8", ((javafx.scene.control.TextField) owner).getText());
    assertFalse(memory.drafts.isEmpty());
    Window.run(second::hide);
  }
}
