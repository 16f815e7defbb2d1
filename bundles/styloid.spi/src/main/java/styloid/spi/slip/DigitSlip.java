package styloid.spi.slip;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import styloid.model.Message;
import styloid.model.Quantity;
import styloid.spi.Texts;

/** The digits are right but for their order or the place of the point. */
record DigitSlip(Slip slip, Quantity value) implements Meant {

  /** The decimal point one place to the left or to the right. */
  static List<Meant> points(Around around) {
    Quantity typed = around.typed();
    if (typed.amount().signum() == 0) {
      return List.of();
    }
    return List.of(
        meant(Slip.POINT, typed, typed.amount().movePointLeft(1)),
        meant(Slip.POINT, typed, typed.amount().movePointRight(1)));
  }

  /** Every pair of digits beside each other swapped, also across the point. */
  static List<Meant> swaps(Around around) {
    Quantity typed = around.typed();
    String digits = typed.amount().unscaledValue().abs().toString();
    ArrayList<Meant> all = new ArrayList<>();
    for (int at = 0; at + 1 < digits.length(); at++) {
      if (digits.charAt(at) != digits.charAt(at + 1)) {
        String swapped =
            digits.substring(0, at)
                + digits.charAt(at + 1)
                + digits.charAt(at)
                + digits.substring(at + 2);
        BigDecimal amount =
            new BigDecimal(new java.math.BigInteger(swapped), typed.amount().scale());
        all.add(meant(Slip.SWAP, typed, typed.amount().signum() < 0 ? amount.negate() : amount));
      }
    }
    return all;
  }

  private static DigitSlip meant(Slip slip, Quantity typed, BigDecimal amount) {
    return new DigitSlip(slip, new Quantity(amount, typed.unit()));
  }

  @Override
  public Message question(Around around, Comparison against, Message beside) {
    BigDecimal plain = value.amount().stripTrailingZeros();
    Quantity shown = new Quantity(plain.scale() < 0 ? plain.setScale(0) : plain, value.unit());
    return Message.of(Texts.COMMON, "slip." + slip.code(), around.typed(), beside, shown);
  }
}
