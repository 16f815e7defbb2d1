package styloid.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import styloid.model.Absence;
import styloid.model.Choice;
import styloid.model.Digit;
import styloid.model.InSpite;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.Quantity;
import styloid.model.Side;
import styloid.model.Unit;

/** Holds, rests and overrides by keys in a real scene, with a clock the test moves. */
class TimersWindowTest {
  private static final ItemKey HOLD = SampleTest.key("hold", Side.RIGHT);
  private static final ItemKey TIME = SampleTest.key("hold-time", Side.RIGHT);

  private static final class Hands extends Clock {
    private volatile Instant now = Instant.EPOCH;

    @Override
    public Instant instant() {
      return now;
    }

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return this;
    }
  }

  private final Hands clock = new Hands();
  private Memory memory;
  private FormView form;
  private Stage stage;
  private int tones;

  @BeforeEach
  void open() {
    Window.start();
    memory =
        new Memory(
            SampleTest.definition(),
            SampleTest.context(Set.of(Side.LEFT), SampleTest.noResistance(Side.LEFT)));
    form = Window.on(() -> new FormView(memory, SampleTest.texts(), clock, () -> tones++));
    memory.onChange(this::show);
    Window.run(this::show);
    stage = Window.show(form, 900, 700);
    for (Side side : Set.of(Side.RIGHT, Side.LEFT)) {
      Window.run(() -> memory.record(SampleTest.key("range", side), new Choice("full"), false));
    }
    goTo(HOLD);
  }

  @AfterEach
  void close() {
    Window.run(stage::hide);
  }

  private void show() {
    form.show(memory.state(), SampleTest.definition().groups());
  }

  private void goTo(ItemKey key) {
    Window.run(() -> form.focusOn(key));
    Window.settle();
  }

  private void fire(KeyEvent event) {
    Window.run(() -> Event.fireEvent(stage.getScene().getFocusOwner(), event));
    Window.settle();
  }

  private static KeyEvent event(javafx.event.EventType<KeyEvent> type, String text, KeyCode code) {
    return new KeyEvent(type, text, "", code, false, false, false, false);
  }

  private void repeat(String text) {
    fire(event(KeyEvent.KEY_TYPED, text, KeyCode.UNDEFINED));
  }

  private void type(String text) {
    repeat(text);
    fire(event(KeyEvent.KEY_RELEASED, "", KeyCode.UNDEFINED));
  }

  private void press(KeyCode code) {
    fire(event(KeyEvent.KEY_PRESSED, "", code));
    fire(event(KeyEvent.KEY_RELEASED, "", code));
  }

  private void after(long millis) {
    clock.now = clock.now.plusMillis(millis);
    Window.run(form::tick);
  }

  private boolean sweeps() {
    return Window.on(() -> form.lookup(".hold").isVisible());
  }

  @Test
  void theEndOfAHoldSoundsOnceAndChoosesNothing() {
    type("+");
    assertTrue(sweeps());
    after(2999);
    assertEquals(0, tones);
    after(1);
    after(500);
    assertEquals(1, tones);
    assertEquals(Optional.empty(), memory.value(HOLD));
    type("2");
    assertEquals(Optional.of(new Choice("moderate")), memory.value(HOLD));
    assertEquals(Optional.empty(), memory.value(TIME));
    assertFalse(sweeps());
  }

  @Test
  void lettingGoDuringTheHoldRecordsThatAndHowLongItWasHeld() {
    type("+");
    after(1870);
    type("+");
    assertEquals(Optional.of(new Choice("yielded")), memory.value(HOLD));
    assertEquals(Optional.of(Quantity.of("1.8", Unit.SECOND)), memory.value(TIME));
    assertFalse(sweeps());
  }

  @Test
  void lettingGoAtOnceIsGivingWay() {
    press(KeyCode.F9);
    after(600);
    press(KeyCode.F9);
    assertEquals(Optional.of(new Choice("gave-way")), memory.value(HOLD));
    assertEquals(Optional.of(Quantity.of("0.6", Unit.SECOND)), memory.value(TIME));
  }

  @Test
  void aKeyThatRepeatsItselfDoesNotLetGo() {
    repeat("+");
    after(700);
    repeat("+");
    assertEquals(Optional.empty(), memory.value(HOLD));
    assertTrue(sweeps());
  }

  @Test
  void escapeAndLeavingDropTheHoldWithoutARecord() {
    type("+");
    press(KeyCode.ESCAPE);
    assertFalse(sweeps());
    type("+");
    goTo(SampleTest.key("range", Side.RIGHT));
    assertFalse(sweeps());
    assertEquals(2, memory.entries.size());
  }

  @Test
  void aPlusIsPartOfAnAnswerWhereNothingIsHeld() {
    ItemKey grade = SampleTest.key("grade", Side.RIGHT);
    goTo(grade);
    type("3");
    type("+");
    assertEquals(Optional.of(new Choice("3+")), memory.value(grade));
  }

  @Test
  void theRestOfAHandShowsBeforeItsNextTrial() {
    ItemKey first = new ItemKey(SampleTest.ID, new ItemId("power"), Side.RIGHT, Digit.NONE, 1);
    ItemKey next = new ItemKey(SampleTest.ID, new ItemId("power"), Side.RIGHT, Digit.NONE, 2);
    Window.run(() -> memory.record(first, Quantity.of("30", Unit.KILOGRAM_FORCE), false));
    clock.now = Instant.EPOCH.plusSeconds(17);
    goTo(next);
    assertEquals("rest: 43 s", rest());
    type("2");
    type("9");
    press(KeyCode.ENTER);
    assertEquals(Optional.of(Quantity.of("29", Unit.KILOGRAM_FORCE)), memory.value(next));
    goTo(first.opposite());
    assertEquals("", rest());
  }

  private String rest() {
    return Window.on(() -> ((javafx.scene.control.Label) form.lookup(".entry-rest")).getText());
  }

  @Test
  void aWithheldPlaceOpensUnderAReasonThatIsKept() {
    ItemKey hold = HOLD.opposite();
    goTo(hold);
    type("o");
    Node owner = Window.on(() -> stage.getScene().getFocusOwner());
    TextField why = (TextField) owner;
    press(KeyCode.ENTER);
    assertTrue(Window.on(why::isFocused), "no reason, no opening");
    Window.run(() -> why.setText("released today"));
    Window.run(() -> why.fireEvent(new javafx.event.ActionEvent()));
    Window.settle();
    type("1");
    assertEquals(Optional.of(new Choice("strong")), memory.value(hold));
    assertEquals(
        Optional.of("released today"),
        memory.entries.get(memory.entries.size() - 1).override().map(InSpite::reason));
  }

  @Test
  void whoIsNotLicensedSeesWhoSetItAndIsAskedWhoWorks() {
    memory.licensed = false;
    ItemKey hold = HOLD.opposite();
    goTo(hold);
    List<String> said = Window.on(() -> labels());
    assertTrue(said.stream().anyMatch(w -> w.contains("set by")), said::toString);
    assertTrue(
        said.stream().anyMatch(w -> w.contains("Only a licensed therapist")), said::toString);
    type("o");
    assertEquals(List.of("who works"), memory.calls);
    type("1");
    assertEquals(Optional.empty(), memory.value(hold));
    type("*");
    assertTrue(memory.value(hold).orElseThrow() instanceof Absence);
  }

  private List<String> labels() {
    return form.lookupAll(".label").stream()
        .filter(n -> n.isVisible() && n instanceof Labeled)
        .map(n -> String.valueOf(((Labeled) n).getText()))
        .toList();
  }

  @Test
  void aPlaceOpenedClosesAgainWhenSomebodyWorksWhoIsNotLicensed() {
    ItemKey hold = HOLD.opposite();
    goTo(hold);
    type("o");
    TextField why = (TextField) Window.on(() -> stage.getScene().getFocusOwner());
    Window.run(() -> why.setText("released today"));
    Window.run(() -> why.fireEvent(new javafx.event.ActionEvent()));
    Window.settle();
    memory.licensed = false;
    type("1");
    assertEquals(Optional.empty(), memory.value(hold));
  }

  @Test
  void goingBackFromTheReasonLeavesThePlaceWithheld() {
    ItemKey hold = HOLD.opposite();
    goTo(hold);
    type("o");
    press(KeyCode.ESCAPE);
    type("1");
    type("+");
    assertEquals(Optional.empty(), memory.value(hold));
  }

  @Test
  void theNoteNamesWhoSetThePrecaution() {
    goTo(HOLD.opposite());
    type("o");
    boolean named =
        Window.on(
            () ->
                form.lookupAll(".note-text").stream()
                    .map(n -> ((javafx.scene.control.Label) n).getText())
                    .anyMatch(t -> t.contains("set by Dr Example") && t.contains("Why")));
    assertTrue(named);
  }
}
