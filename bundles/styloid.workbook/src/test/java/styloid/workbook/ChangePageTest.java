package styloid.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import styloid.model.Absence;
import styloid.model.Choice;
import styloid.model.Digit;
import styloid.model.Quantity;
import styloid.model.Side;
import styloid.model.Unit;

class ChangePageTest {
  private static final LocalDate BEFORE = LocalDate.of(2026, 2, 1);
  private static final LocalDate FIRST = LocalDate.of(2026, 1, 10);

  private static Page page(Sample sample) {
    return Plan.of(sample.report()).pages().stream()
        .filter(p -> p.name().equals("Change"))
        .findFirst()
        .orElseThrow();
  }

  private static List<Box> row(Page page, String item, String side) {
    return page.lines().stream()
        .map(Line::boxes)
        .filter(boxes -> boxes.size() > 2)
        .filter(boxes -> text(boxes.get(0)).startsWith(item) && text(boxes.get(1)).equals(side))
        .findFirst()
        .orElseThrow();
  }

  private static String text(Box box) {
    return box instanceof Box.Words words ? words.text() : "";
  }

  private static Sample earlier() {
    Sample earlier = Sample.empty();
    earlier.squeeze(Side.LEFT, "10", "11", "12.5");
    earlier.record("bend", Side.LEFT, Digit.INDEX, 1, Quantity.of("90", Unit.DEGREE));
    earlier.record("look", Side.LEFT, Digit.NONE, 1, new Choice("limited"));
    earlier.record("look", Side.RIGHT, Digit.NONE, 1, new Choice("limited"));
    earlier.record("push", Side.LEFT, Digit.NONE, 1, new Absence(Absence.Reason.PAIN));
    return earlier;
  }

  @Test
  void isLeftOutAtTheFirstVisit() {
    assertTrue(
        Plan.of(Sample.full().report()).pages().stream().noneMatch(p -> p.name().equals("Change")));
  }

  @Test
  void visitsStandFromOldestToThisOneWithTheChangeSinceTheLast() {
    Sample first = Sample.empty();
    first.squeeze(Side.LEFT, "7", "8", "9");
    Page page = page(Sample.full().after(BEFORE, earlier()).after(FIRST, first));
    List<Box> row = row(page, "Squeeze, mean of 3 trials", "left");
    assertEquals(8.0, ((Box.Figure) row.get(2)).value());
    assertEquals(33.5 / 3, ((Box.Figure) row.get(3)).value());
    Box.Live now = (Box.Live) row.get(4);
    assertEquals(59.0 / 3, now.value());
    assertTrue(now.formula().startsWith("AVERAGE(sample__squeeze__left__1,"), now.formula());
    assertEquals(59.0 / 3 - 33.5 / 3, ((Box.Live) row.get(5)).value());
  }

  @Test
  void poundsOfAnEarlierVisitAreConverted() {
    Sample pounds = Sample.empty();
    for (int trial = 1; trial <= 3; trial++) {
      Quantity value = Quantity.of("10", Unit.POUND_FORCE);
      pounds.record("squeeze", Side.LEFT, Digit.NONE, trial, value);
    }
    List<Box> row = row(page(Sample.full().after(BEFORE, pounds)), "Squeeze", "left");
    assertEquals(4.5359237, ((Box.Figure) row.get(2)).value(), 1e-12);
  }

  @Test
  void wordsAreComparedAndAbsencesNeverCounted() {
    Page page = page(Sample.full().after(BEFORE, earlier()));
    assertTrue(
        page.lines().stream()
            .map(Line::boxes)
            .filter(boxes -> boxes.size() > 2 && text(boxes.get(0)).startsWith("Wrist extension"))
            .noneMatch(boxes -> text(boxes.get(1)).equals("left")),
        "limited at both visits, and said to be left out");
    assertEquals("changed", text(row(page, "Wrist extension", "right").get(4)));
    List<Box> push = row(page, "Holds", "left");
    assertEquals("pain", text(push.get(2)));
    assertEquals("precaution (fracture)", text(push.get(3)));
    assertEquals("cannot be said", text(push.get(4)));
  }

  @Test
  void meanWithAMissingTrialIsIncomplete() {
    Sample two = Sample.empty();
    two.squeeze(Side.LEFT, "10", "11");
    List<Box> row = row(page(Sample.full().after(BEFORE, two)), "Squeeze", "left");
    assertEquals("incomplete", text(row.get(2)));
    assertEquals("cannot be said", text(row.get(4)));
    assertEquals(Optional.empty(), row.get(2).name());
  }
}
