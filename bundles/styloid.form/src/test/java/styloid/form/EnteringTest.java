package styloid.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import styloid.model.Absence;
import styloid.model.Choice;
import styloid.model.Item;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.Message;
import styloid.model.Quantity;
import styloid.model.Side;
import styloid.model.Unit;
import styloid.model.Value;

class EnteringTest {
  private final Memory memory =
      new Memory(SampleTest.definition(), SampleTest.context(Set.of(Side.LEFT)));
  private final ItemKey key =
      new ItemKey(SampleTest.ID, new ItemId("mp"), Side.LEFT, styloid.model.Digit.INDEX, 1);
  private final Item angle = SampleTest.definition().item(key.item()).orElseThrow();
  private final Entering entering = new Entering(key, angle, memory, Locale.ENGLISH);

  private Entering.Then enter() {
    return entering.enter(Unit.DEGREE);
  }

  private Optional<Value> recorded() {
    return memory.value(key);
  }

  @Test
  void aLikelyValueIsRecordedAndEntryGoesOn() {
    entering.type("85");
    assertEquals(Entering.Then.NEXT, enter());
    assertEquals(Optional.of(Quantity.of("85", Unit.DEGREE)), recorded());
    assertFalse(memory.entries.get(0).confirmed());
    assertFalse(entering.dirty());
  }

  @Test
  void anUnusualValueIsAskedOnceAndKeptAsConfirmed() {
    entering.type("170");
    assertEquals(Entering.Then.STAY, enter());
    assertEquals(Entering.Mode.QUESTION, entering.mode());
    assertTrue(recorded().isEmpty());
    assertEquals(Entering.Then.NEXT, enter());
    assertEquals(Optional.of(Quantity.of("170", Unit.DEGREE)), recorded());
    assertTrue(memory.entries.get(0).confirmed());
  }

  @Test
  void aDoubtAboutALikelyValueIsAskedOnceAndKeptAsConfirmed() {
    entering.asking(v -> Optional.of(Message.verbatim("swapped?")));
    entering.type("58");
    assertEquals(Entering.Then.STAY, enter());
    assertEquals(Optional.of(Message.verbatim("swapped?")), entering.message());
    entering.escape();
    assertEquals(Entering.Then.NEXT, enter(), "asked before, so Enter keeps it");
    assertTrue(memory.entries.get(0).confirmed());
    entering.type("58");
    assertEquals(Entering.Then.NEXT, enter(), "never asked twice for one value");
    entering.type("57");
    assertEquals(Entering.Then.STAY, enter(), "another value is another question");
  }

  @Test
  void typingAgainReplacesWhatIsDoubtedAndLeavingKeepsNothing() {
    entering.asking(v -> v.equals(Quantity.of("58", Unit.DEGREE)) ? doubt() : Optional.empty());
    entering.type("58");
    enter();
    entering.escape();
    entering.leave(Unit.DEGREE);
    assertEquals(Entering.Mode.QUESTION, entering.mode());
    assertTrue(recorded().isEmpty());
    entering.type("85");
    assertEquals(Entering.Mode.TEXT, entering.mode());
    assertEquals(Entering.Then.NEXT, enter());
    assertFalse(memory.entries.get(0).confirmed());
  }

  private static Optional<Message> doubt() {
    return Optional.of(Message.verbatim("swapped?"));
  }

  @Test
  void aDoubtFromBesideIsAskedLikeAnUnusualValueAndTogetherWithIt() {
    Message doubt = Message.of("form", "doubt");
    entering.asking(value -> Optional.of(doubt));
    entering.type("85");
    assertEquals(Entering.Then.STAY, enter());
    assertEquals(Optional.of(doubt), entering.message());
    entering.type("170");
    assertEquals(Entering.Then.STAY, enter());
    assertEquals("check.and", entering.message().orElseThrow().key());
    assertEquals(doubt, entering.message().orElseThrow().args().get(1));
    assertEquals(Entering.Then.NEXT, enter());
    assertTrue(memory.entries.get(0).confirmed());
    assertEquals(Optional.of(Quantity.of("170", Unit.DEGREE)), recorded());
  }

  @Test
  void escapeGoesBackFromTheQuestionToTheText() {
    entering.type("170");
    enter();
    entering.escape();
    assertEquals(Entering.Mode.TEXT, entering.mode());
    assertEquals("170", entering.text());
    assertTrue(recorded().isEmpty());
  }

  @Test
  void typingOnTakesTheQuestionBack() {
    entering.type("170");
    enter();
    entering.type("17");
    assertEquals(Entering.Mode.TEXT, entering.mode());
    assertEquals(Entering.Then.NEXT, enter());
    assertFalse(memory.entries.get(0).confirmed());
  }

  @ParameterizedTest
  @CsvSource({"181", "-61", "abc", "8.5", "90 kg"})
  void whatCannotBeIsRefusedAndTheTextStays(String typed) {
    entering.type(typed);
    assertEquals(Entering.Then.STAY, enter());
    assertEquals(Entering.Mode.REFUSED, entering.mode());
    assertTrue(entering.message().isPresent());
    assertEquals(typed, entering.text());
    assertEquals(typed, memory.drafts.get(key));
    assertTrue(recorded().isEmpty());
  }

  @ParameterizedTest
  @CsvSource({"180, QUESTION", "-60, QUESTION", "150, TEXT", "-20, TEXT", "151, QUESTION"})
  void bothEndsOfEachRangeAreIncluded(String typed, Entering.Mode after) {
    entering.type(typed);
    enter();
    assertEquals(after, entering.mode());
  }

  @Test
  void leavingCommitsWhatWasTyped() {
    entering.type("85");
    entering.leave(Unit.DEGREE);
    assertEquals(Optional.of(Quantity.of("85", Unit.DEGREE)), recorded());
    assertTrue(memory.drafts.isEmpty());
  }

  @Test
  void leavingAnUnusualValueKeepsTheQuestionAndTheDraft() {
    entering.type("170");
    entering.leave(Unit.DEGREE);
    assertEquals(Entering.Mode.QUESTION, entering.mode());
    assertTrue(recorded().isEmpty());
    assertEquals("170", memory.drafts.get(key));
  }

  @Test
  void leavingAnEmptiedFieldChangesNothing() {
    memory.record(key, Quantity.of("85", Unit.DEGREE), false);
    entering.type("");
    entering.leave(Unit.DEGREE);
    assertEquals(Optional.of(Quantity.of("85", Unit.DEGREE)), recorded());
    assertFalse(entering.dirty());
  }

  @Test
  void everyKeyPressIsKeptAsDraft() {
    entering.type("8");
    entering.type("85");
    assertEquals("85", memory.drafts.get(key));
  }

  @Test
  void aDraftOfBeforeIsUnderWayAgain() {
    entering.resume("8");
    assertTrue(entering.dirty());
    assertEquals(Entering.Then.NEXT, enter());
    assertEquals(Optional.of(Quantity.of("8", Unit.DEGREE)), recorded());
  }

  @Test
  void enterWithoutTextGoesOnAndRecordsNothing() {
    assertEquals(Entering.Then.NEXT, enter());
    assertTrue(memory.entries.isEmpty());
  }

  @ParameterizedTest
  @CsvSource({"1, NOT_DONE", "2, REFUSED", "3, UNABLE", "4, PAIN", "5, PRECAUTION", "6, EQUIPMENT"})
  void anAbsenceTakesItsReasonByDigit(int digit, Absence.Reason reason) {
    entering.absence();
    assertEquals(Entering.Mode.REASON, entering.mode());
    assertEquals(Entering.Then.NEXT, entering.reason(digit));
    assertEquals(Optional.of(new Absence(reason)), recorded());
  }

  @ParameterizedTest
  @CsvSource({"0", "7", "-1"})
  void aDigitWithoutReasonStays(int digit) {
    entering.absence();
    assertEquals(Entering.Then.STAY, entering.reason(digit));
    assertTrue(memory.entries.isEmpty());
  }

  @Test
  void theAbsenceKeyTwiceIsNoAbsence() {
    entering.absence();
    entering.absence();
    assertEquals(Entering.Mode.TEXT, entering.mode());
  }

  @Test
  void anAnswerIsRecordedWithItsKeyAlone() {
    ItemKey choice = SampleTest.key("range", Side.LEFT);
    Item item = SampleTest.definition().item(choice.item()).orElseThrow();
    Entering chooser = new Entering(choice, item, memory, Locale.ENGLISH);
    assertEquals(Entering.Then.NEXT, chooser.choose(new Choice("none")));
    assertEquals(Optional.of(new Choice("none")), memory.value(choice));
    assertEquals(Entering.Then.STAY, chooser.choose(new Choice("unheard")));
    assertEquals(1, memory.entries.size());
  }
}
