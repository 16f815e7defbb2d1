package styloid.goniometry;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.IntStream;
import styloid.model.Condition;
import styloid.model.Demand;
import styloid.model.Item;
import styloid.model.ItemId;
import styloid.model.ItemKind;
import styloid.model.Unit;

/** What is measured of the hand as a whole: opposition, fingertip to crease, span. */
final class HandItems {
  static final String CREASE_GROUP = "fingertip-to-crease";
  static final String OPPOSITION_GROUP = "opposition";
  static final String SPAN_GROUP = "span";
  static final ItemId CREASE = new ItemId("fingertip-to-crease");
  static final ItemId KAPANDJI = new ItemId("kapandji");
  static final ItemId SPAN = new ItemId("span");

  private HandItems() {}

  /** Fingertip to distal palmar crease in making a fist, each finger; 0 when it touches. */
  static Item crease() {
    return new Item(
        CREASE,
        length("20", "0", "10"),
        Item.BOTH,
        Item.FINGERS,
        1,
        Condition.always(),
        Demand.ACTIVE_MOTION,
        true);
  }

  /** The farthest point the thumb tip touches, 0 to 10. */
  static Item kapandji() {
    List<String> steps = IntStream.rangeClosed(0, 10).mapToObj(Integer::toString).toList();
    return Item.bothSides(KAPANDJI.value(), new ItemKind.Choices(steps), Demand.ACTIVE_MOTION)
        .asOptional();
  }

  /** Thumb tip to little fingertip with the hand spread. */
  static Item span() {
    return Item.bothSides(SPAN.value(), length("35", "5", "28"), Demand.ACTIVE_MOTION).asOptional();
  }

  private static ItemKind.Number length(String max, String likelyMin, String likelyMax) {
    return new ItemKind.Number(
        List.of(Unit.CENTIMETRE, Unit.MILLIMETRE),
        BigDecimal.ZERO,
        new BigDecimal(max),
        new BigDecimal(likelyMin),
        new BigDecimal(likelyMax),
        1);
  }
}
