package styloid.spi.slip;

import styloid.model.Codes;

/** The slips there is a question for. */
public enum Slip {
  /** The number belongs to another unit of the item, such as lb read as kg. */
  UNIT,
  /** The decimal point is one place off. */
  POINT,
  /** Two digits beside each other are swapped. */
  SWAP,
  /** The value belongs to the other limb. */
  SIDE;

  public String code() {
    return Codes.of(this);
  }
}
