package styloid.grip;

import java.util.Locale;
import java.util.Map;
import styloid.model.ItemId;

/** The four actions whose force is measured, three trials a hand. */
enum Measure {
  /** Whole-hand grip. */
  POWER,
  /** Pad of the thumb against the pad of the index finger. */
  TIP,
  /** Pad of the thumb against the side of the index finger. */
  KEY,
  /** Pad of the thumb against the pads of index and middle finger. */
  PALMAR;

  static final int TRIALS = 3;

  /** Word of ids, keys and tables. */
  String code() {
    return name().toLowerCase(Locale.ROOT);
  }

  ItemId item() {
    return new ItemId(code());
  }

  /** Key columns of this measure's rows in the norm tables. */
  Map<String, String> tableKeys() {
    return Map.of("measure", code());
  }
}
