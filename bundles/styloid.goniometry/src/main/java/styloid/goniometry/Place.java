package styloid.goniometry;

import styloid.model.Digit;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.ResultId;
import styloid.model.ResultKey;
import styloid.model.Side;

/** One limb or one digit of it. */
record Place(Side side, Digit digit) {
  ItemKey key(Motion motion, Mode mode) {
    return key(motion.item(mode));
  }

  ItemKey key(ItemId item) {
    return new ItemKey(Goniometry.ID, item, side, digit, 1);
  }

  ResultKey result(ResultId id) {
    return new ResultKey(Goniometry.ID, id, side, digit);
  }

  Place opposite() {
    return new Place(side.opposite(), digit);
  }
}
