package styloid.spi;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import styloid.model.Caution;
import styloid.model.Condition;
import styloid.model.Demand;
import styloid.model.Digit;
import styloid.model.Item;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.ItemKind;
import styloid.model.Precaution;
import styloid.model.Region;
import styloid.model.Side;
import styloid.model.Source;
import styloid.model.TestId;
import styloid.model.Unit;

class TestDefinitionTest {
  private static final Item ANGLE =
      Item.bothSides(
              "flexion", ItemKind.Number.of(Unit.DEGREE, 0, 0, 120, 130, 0), Demand.ACTIVE_MOTION)
          .withDigits(Item.FINGERS)
          .withTrials(2);

  private static Group group(String id, List<String> cautions, Item... items) {
    return new Group(
        id,
        Region.FINGERS,
        Set.of(Region.FINGERS),
        List.of(items),
        Group.Walk.ALTERNATING,
        Group.Layout.DIGIT_GRID,
        cautions,
        Guide.none());
  }

  private static TestDefinition definition(String version, Group... groups) {
    return new TestDefinition(
        new TestId("t"),
        version,
        1,
        List.of(groups),
        List.of(new Caution("gently", Source.commonPractice())),
        List.of(),
        List.of(),
        Set.of(),
        new Labels(Map.of("en", Map.of())));
  }

  @Test
  void everySideDigitAndTrialIsAKey() {
    TestDefinition definition = definition("1.0", group("g", List.of(), ANGLE));
    assertEquals(2 * 4 * 2, definition.keys().size());
    assertTrue(definition.keys().stream().allMatch(definition::has));
    ItemKey thumb = new ItemKey(definition.id(), ANGLE.id(), Side.LEFT, Digit.THUMB, 1);
    assertFalse(definition.has(thumb));
    assertFalse(definition.has(new ItemKey(definition.id(), ANGLE.id(), Side.LEFT, Digit.RING, 3)));
  }

  @Test
  void whatContradictsItselfIsRefused() {
    Item other = Item.bothSides("a", new ItemKind.Words(5), Demand.NONE);
    Item lost = other.askedWhen(Condition.is("gone", "x"));
    assertRefused("1.0", group("g", List.of(), other), group("g", List.of(), ANGLE));
    assertRefused("1.0", group("g", List.of(), other, other));
    assertRefused("1.0", group("g", List.of("unknown-caution"), other));
    assertRefused("1.0", group("g", List.of(), lost));
    assertRefused("first", group("g", List.of(), other));
  }

  private static void assertRefused(String version, Group... groups) {
    assertThrows(IllegalArgumentException.class, () -> definition(version, groups));
  }

  @Test
  void aTimerIsFoundByKindAndItem() {
    Item held = Item.bothSides("held", ItemKind.Choices.of("gave-way", "yielded"), Demand.NONE);
    Timer.LetGo letGo = new Timer.LetGo("gave-way", "yielded", Optional.empty());
    Timer hold = Timer.hold(3, held.id(), letGo, Source.commonPractice());
    Timer rest = Timer.rest(60, Set.of(ANGLE.id()), Source.commonPractice());
    TestDefinition timed =
        definition("1.0", group("g", List.of(), held, ANGLE)).withTimers(List.of(hold, rest));
    assertEquals(Optional.of(hold), timed.timer(Timer.Kind.HOLD, held.id()));
    assertEquals(Optional.empty(), timed.timer(Timer.Kind.REST, held.id()));
    assertEquals(Optional.of(rest), timed.timer(Timer.Kind.REST, ANGLE.id()));
  }

  @Test
  void aTimerThatDoesNotFitItsItemIsRefused() {
    Item held = Item.bothSides("held", ItemKind.Choices.of("gave-way", "strong"), Demand.NONE);
    TestDefinition plain = definition("1.0", group("g", List.of(), held, ANGLE));
    Timer.LetGo letGo = new Timer.LetGo("gave-way", "yielded", Optional.empty());
    Timer.LetGo angle = new Timer.LetGo("gave-way", "strong", Optional.of(ANGLE.id()));
    for (Timer timer :
        List.of(
            Timer.hold(3, held.id(), letGo, Source.commonPractice()),
            Timer.hold(3, held.id(), angle, Source.commonPractice()),
            Timer.hold(3, ANGLE.id(), letGo, Source.commonPractice()),
            Timer.rest(60, Set.of(new ItemId("gone")), Source.commonPractice()))) {
      assertThrows(
          IllegalArgumentException.class, () -> plain.withTimers(List.of(timer)), timer::toString);
    }
    Timer rest = Timer.rest(60, Set.of(ANGLE.id()), Source.commonPractice());
    assertThrows(IllegalArgumentException.class, () -> plain.withTimers(List.of(rest, rest)));
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 601})
  void aTimerOutOfRangeIsRefused(int seconds) {
    assertThrows(
        IllegalArgumentException.class,
        () -> Timer.rest(seconds, Set.of(ANGLE.id()), Source.commonPractice()));
  }

  @Test
  void aSettingHoldsAsPresetUntilOneOfItsCodesIsChosen() {
    Setting norm = new Setting("t.norm", List.of("a-1985", "b-2011"), "a-1985");
    assertEquals(Optional.of("a-1985"), norm.in(Map.of()));
    assertEquals(Optional.of("b-2011"), norm.in(Map.of("t.norm", "b-2011")));
    assertEquals(Optional.empty(), norm.in(Map.of("t.norm", "c-1999")));
    TestDefinition plain = definition("1.0", group("g", List.of(), ANGLE));
    assertEquals(Optional.of(norm), plain.withSettings(List.of(norm)).setting("t.norm"));
    Setting foreign = new Setting("other.norm", List.of("a", "b"), "a");
    assertThrows(IllegalArgumentException.class, () -> plain.withSettings(List.of(foreign)));
    assertThrows(IllegalArgumentException.class, () -> plain.withSettings(List.of(norm, norm)));
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          # setting, code, preset -> fits
          t.norm, b-2011, a-1985, true
          t.norm, a-1985, a-1985, true
          t.norm, c-1999, a-1985, false
          t.norm, b-2011, b-2011, false
          t.name, b-2011, a-1985, false
          u.norm, b-2011, a-1985, false
          """)
  void aConditionMayNameOnlyASettingOfItsOwnTestAsItIs(
      String setting, String code, String preset, boolean fits) {
    Setting norm = new Setting("t.norm", List.of("a-1985", "b-2011"), "a-1985");
    Condition asked = Condition.not(new Condition.Chosen(setting, code, preset));
    Group group = group("g", List.of(), ANGLE.askedWhen(asked));
    if (fits) {
      assertEquals(List.of(group), asking(group, norm).groups());
    } else {
      assertThrows(IllegalArgumentException.class, () -> asking(group, norm));
    }
    assertRefused("1.0", group);
  }

  private static TestDefinition asking(Group group, Setting setting) {
    TestDefinition plain = definition("1.0", group("g", List.of(), ANGLE));
    return new TestDefinition(
        plain.id(),
        plain.version(),
        plain.order(),
        List.of(group),
        plain.cautions(),
        plain.testCautions(),
        plain.results(),
        plain.reads(),
        plain.labels(),
        Optional.empty(),
        List.of(),
        List.of(setting));
  }

  @Test
  void aSettingMakesConditionsOnlyOnItsOwnCodes() {
    Setting norm = new Setting("t.norm", List.of("a-1985", "b-2011"), "a-1985");
    assertEquals(new Condition.Chosen("t.norm", "b-2011", "a-1985"), norm.is("b-2011"));
    assertThrows(IllegalArgumentException.class, () -> norm.is("c-1999"));
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          t,      a b, a
          t.norm, a,   a
          t.norm, a a, a
          t.norm, a b, c
          T.norm, a b, a
          """)
  void aSettingThatContradictsItselfIsRefused(String key, String codes, String preset) {
    List<String> list = List.of(codes.split(" "));
    assertThrows(IllegalArgumentException.class, () -> new Setting(key, list, preset));
  }

  @Test
  void aPrecautionOnALoadedRegionWithholdsTheItem() {
    Group group = group("g", List.of(), ANGLE);
    Precaution limit =
        new Precaution(
            Precaution.Kind.NO_ACTIVE_MOTION,
            Region.FINGERS,
            Side.RIGHT,
            Digit.RING,
            Optional.empty(),
            Optional.empty(),
            "surgeon",
            "");
    LocalDate day = LocalDate.of(2026, 3, 2);
    ItemKey ring = new ItemKey(new TestId("t"), new ItemId("flexion"), Side.RIGHT, Digit.RING, 1);
    assertEquals(List.of(limit), Withheld.by(group, ANGLE, ring, List.of(limit), day));
    assertEquals(List.of(), Withheld.by(group, ANGLE, ring.opposite(), List.of(limit), day));
  }
}
