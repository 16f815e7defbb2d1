package styloid.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import styloid.model.Absence;
import styloid.model.Choice;
import styloid.model.ItemKey;
import styloid.model.Side;
import styloid.spi.Group;

class WalkTest {
  private static List<String> order(String group, Set<Side> involved) {
    FormState state = SampleTest.state(SampleTest.context(involved));
    return Walk.order(SampleTest.ID, SampleTest.named(group), state.sides()).stream()
        .map(WalkTest::shortly)
        .toList();
  }

  private static String shortly(ItemKey key) {
    return key.item() + " " + key.side().code() + " " + key.digit().code() + " " + key.trial();
  }

  @Test
  void uninvolvedSideIsWholeBeforeTheInvolvedOne() {
    List<String> keys = order("strength", Set.of(Side.RIGHT));
    assertEquals("range left none 1", keys.get(0));
    assertEquals("remark left none 1", keys.get(4));
    assertEquals("range right none 1", keys.get(5));
  }

  @Test
  void rightComesFirstWhenBothOrNoneAreInvolved() {
    assertEquals("range right none 1", order("strength", Set.of()).get(0));
    assertEquals("range right none 1", order("strength", Set.of(Side.RIGHT, Side.LEFT)).get(0));
  }

  @Test
  void alternatingTakesEachTrialOnBothSides() {
    assertEquals(
        List.of(
            "instrument unsided none 1",
            "power right none 1",
            "power left none 1",
            "power right none 2",
            "power left none 2",
            "power right none 3",
            "power left none 3"),
        order("grip", Set.of(Side.LEFT)));
  }

  @Test
  void aFingerIsMeasuredWholeBeforeTheNext() {
    List<String> keys = order("fingers", Set.of(Side.LEFT));
    assertEquals("mp right index 1", keys.get(0));
    assertEquals("pip right index 1", keys.get(1));
    assertEquals("mp right middle 1", keys.get(2));
    assertEquals(16, keys.size());
  }

  @Test
  void whatIsNotAskedIsNotWalked() {
    Memory memory = memory();
    Group table = SampleTest.named("motions");
    Route route = Route.through(memory.state(), List.of(table));
    ItemKey right = SampleTest.key("flexion", Side.RIGHT);
    ItemKey left = SampleTest.key("flexion", Side.LEFT);
    assertEquals(Optional.of(left), route.next(right, memory.state()));
    assertEquals(
        Optional.of(SampleTest.key("extension", Side.RIGHT)), route.next(left, memory.state()));
    memory.record(left, new Choice("limited"), false);
    assertEquals(
        Optional.of(SampleTest.key("flexion-pain", Side.LEFT)), route.next(left, memory.state()));
  }

  @Test
  void enterPassesWhatMayBeLeftOutUnlessOneIsThere() {
    Memory memory = memory();
    Route route = Route.through(memory.state(), List.of(SampleTest.named("strength")));
    ItemKey range = SampleTest.key("range", Side.RIGHT);
    ItemKey grade = SampleTest.key("grade", Side.RIGHT);
    ItemKey remark = SampleTest.key("remark", Side.RIGHT);
    assertEquals(Optional.of(grade), route.next(range, memory.state()));
    assertEquals(Optional.of(range.opposite()), route.onward(range, memory.state()));
    assertEquals(Optional.of(remark), route.onward(grade, memory.state()));
    assertEquals(Optional.of(range.opposite()), route.onward(remark, memory.state()));
  }

  @Test
  void namesLoseTheWordsTheyShare() {
    assertEquals("pain", Leads.shortName("Elbow flexion", "Elbow flexion: pain"));
    assertEquals("passive", Leads.shortName("Supination, active", "Supination, passive"));
    assertEquals("flexion", Leads.shortName("Elbow", "Elbow flexion"));
    assertEquals("Fingertips", Leads.shortName("Finger", "Fingertips"));
    assertEquals("Range", Leads.shortName("Range", "Range"));
  }

  @Test
  void walkEndsAtBothEndsOfThePage() {
    Memory memory = memory();
    Route route = Route.through(memory.state(), List.of(SampleTest.named("motions")));
    ItemKey first = SampleTest.key("flexion", Side.RIGHT);
    ItemKey last = SampleTest.key("extension", Side.LEFT);
    assertEquals(Optional.empty(), route.next(last, memory.state()));
    assertEquals(Optional.empty(), route.previous(first, memory.state()));
  }

  @Test
  void startIsTheFirstPlaceStillEmpty() {
    Memory memory = memory();
    Route route = Route.through(memory.state(), List.of(SampleTest.named("motions")));
    assertEquals(Optional.of(SampleTest.key("flexion", Side.RIGHT)), route.start(memory.state()));
    memory.record(SampleTest.key("flexion", Side.RIGHT), new Choice("full"), false);
    assertEquals(Optional.of(SampleTest.key("flexion", Side.LEFT)), route.start(memory.state()));
  }

  @Test
  void aWithheldPlaceIsPassedOnceItsAbsenceIsRecorded() {
    Memory memory =
        new Memory(
            SampleTest.definition(),
            SampleTest.context(Set.of(Side.LEFT), SampleTest.noResistance(Side.LEFT)));
    Route route = Route.through(memory.state(), List.of(SampleTest.named("strength")));
    ItemKey range = SampleTest.key("range", Side.LEFT);
    ItemKey hold = SampleTest.key("hold", Side.LEFT);
    memory.record(range, new Choice("full"), false);
    assertEquals(Optional.of(hold), route.next(range, memory.state()));
    memory.record(hold, new Absence(Absence.Reason.PRECAUTION), false);
    assertEquals(
        Optional.of(SampleTest.key("grade", Side.LEFT)), route.next(range, memory.state()));
  }

  @Test
  void otherSideIsTheSamePlaceOnTheOtherLimb() {
    Memory memory = memory();
    Route route = Route.through(memory.state(), List.of(SampleTest.named("grip")));
    ItemKey second =
        new ItemKey(
            SampleTest.ID, SampleTest.force().id(), Side.RIGHT, styloid.model.Digit.NONE, 2);
    assertEquals(Optional.of(second.opposite()), route.otherSide(second));
    assertFalse(route.otherSide(SampleTest.key("instrument", Side.UNSIDED)).isPresent());
  }

  private static Memory memory() {
    return new Memory(SampleTest.definition(), SampleTest.context(Set.of(Side.LEFT)));
  }
}
