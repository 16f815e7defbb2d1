package styloid.spi.slip;

import styloid.model.Message;
import styloid.model.Quantity;

/** A value that may have been meant instead, and the words that say so. */
interface Meant {
  Slip slip();

  Quantity value();

  /**
   * The question.
   *
   * @param beside what the value meant would fit, as a sentence
   */
  Message question(Around around, Comparison against, Message beside);
}
