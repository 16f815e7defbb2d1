package styloid.spi.slip;

import styloid.model.Message;

/**
 * A suspicion about a number just typed.
 *
 * @param question what was found and what may have been meant
 * @param strength how much better the value meant would fit, as a natural logarithm of a ratio
 */
public record Doubt(Slip slip, Message question, double strength) {}
