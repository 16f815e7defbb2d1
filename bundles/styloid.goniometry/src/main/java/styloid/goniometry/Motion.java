package styloid.goniometry;

import java.util.Set;
import styloid.model.Digit;
import styloid.model.ItemId;
import styloid.model.ItemKind;
import styloid.model.Region;
import styloid.model.Unit;

/**
 * One end of an arc: how far a joint goes from neutral toward one motion, in degrees. Past neutral
 * is positive; an end that does not reach neutral is negative.
 *
 * @param pastNeutral whether going past neutral is called hyperextension here, and falling short of
 *     it a deficit of extension
 * @param limits impossible and implausible values, all ends included
 */
record Motion(
    String id,
    Region region,
    Set<Digit> digits,
    boolean pastNeutral,
    ItemKind.Number limits,
    ItemId active,
    ItemId passive,
    ItemId endFeel) {

  static Motion of(
      String id,
      Region region,
      Set<Digit> digits,
      boolean pastNeutral,
      int min,
      int likelyMin,
      int likelyMax,
      int max) {
    return new Motion(
        id,
        region,
        digits,
        pastNeutral,
        ItemKind.Number.of(Unit.DEGREE, min, likelyMin, likelyMax, max, 1),
        new ItemId(id + "-active"),
        new ItemId(id + "-passive"),
        new ItemId(id + "-end-feel"));
  }

  ItemId item(Mode mode) {
    return mode == Mode.ACTIVE ? active : passive;
  }
}
