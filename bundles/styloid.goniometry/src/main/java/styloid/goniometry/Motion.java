package styloid.goniometry;

import java.util.Optional;
import java.util.Set;
import styloid.model.Digit;
import styloid.model.DigitJoint;
import styloid.model.ItemId;
import styloid.model.ItemKind;
import styloid.model.Region;
import styloid.model.Unit;

/**
 * One end of an arc: how far a joint goes from neutral toward one motion, in degrees. Past neutral
 * is positive; an end that does not reach neutral is negative.
 *
 * @param joint which joint of a digit it moves; empty where it moves none
 * @param pastNeutral whether going past neutral is called hyperextension here, and falling short of
 *     it a deficit of extension
 * @param limits impossible and implausible values, all ends included
 */
record Motion(
    String id,
    Region region,
    Set<Digit> digits,
    Optional<DigitJoint> joint,
    boolean pastNeutral,
    ItemKind.Number limits,
    ItemId active,
    ItemId passive,
    ItemId endFeel) {

  static Motion of(
      String id,
      Region region,
      Set<Digit> digits,
      Optional<DigitJoint> joint,
      boolean pastNeutral,
      int min,
      int likelyMin,
      int likelyMax,
      int max) {
    return new Motion(
        id,
        region,
        digits,
        joint,
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
