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
