package styloid.spi.slip;

import java.util.ArrayList;
import java.util.List;
import styloid.model.Message;
import styloid.model.Quantity;
import styloid.model.Unit;
import styloid.spi.Texts;

/**
 * The typed digits belong to another unit of the item, or those beside it do.
 *
 * @param inOther whether the digits typed are read in the other unit; else the value was converted
 *     and the ones beside it were not
 */
record UnitSlip(Quantity value, Unit other, boolean inOther) implements Meant {

  static List<Meant> of(Around around) {
    ArrayList<Meant> all = new ArrayList<>();
    Quantity typed = around.typed();
    for (Unit unit : around.kind().units()) {
      if (unit != typed.unit()) {
        Quantity read = new Quantity(typed.amount(), unit);
        all.add(new UnitSlip(read.in(typed.unit()), unit, true));
        Quantity converted = new Quantity(typed.in(unit).amount(), typed.unit());
        all.add(new UnitSlip(converted, unit, false));
      }
    }
    return all;
  }

  @Override
  public Slip slip() {
    return Slip.UNIT;
  }

  @Override
  public Message question(Around around, Comparison against, Message beside) {
    Quantity typed = around.typed();
    Quantity read = inOther ? typed : against.about();
    Quantity said = new Quantity(read.amount(), other);
    Quantity would = around.rounded(said.in(typed.unit()).amount(), typed.unit());
    return Message.of(Texts.COMMON, "slip.unit", typed, beside, said, would);
  }
}
