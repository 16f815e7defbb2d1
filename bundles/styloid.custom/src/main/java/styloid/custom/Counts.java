package styloid.custom;

import java.util.Map;
import styloid.model.Digit;
import styloid.model.Side;

/** Checks that names which stand for several values are only put where several may stand. */
record Counts(Map<String, Reference> reads, Side side, Digit digit) {

  void check(Term term, boolean severalFit) throws FormulaException {
    if (term instanceof Term.Name name) {
      check(name, severalFit);
    } else if (term instanceof Term.Call call) {
      boolean lists = Functions.find(call.function()).orElseThrow().lists();
      for (Term arg : call.args()) {
        check(arg, lists && arg instanceof Term.Name);
      }
    } else if (term instanceof Term.Pair pair) {
      check(pair.left(), false);
      check(pair.right(), false);
    } else if (term instanceof Term.Sign sign) {
      check(sign.of(), false);
    }
  }

  private void check(Term.Name name, boolean severalFit) throws FormulaException {
    int count = reads.get(name.name()).count(side, digit);
    if (count == 0) {
      throw new FormulaException(
          name.at(),
          "\""
              + name.name()
              + "\" has no value for a result of "
              + place()
              + "; say \"sides\""
              + " and \"digits\" of the result");
    }
    if (count > 1 && !severalFit) {
      throw new FormulaException(
          name.at(),
          "\""
              + name.name()
              + "\" stands for "
              + count
              + " values here; put it into AVERAGE, MAX, MIN, MEDIAN, SUM or the like");
    }
  }

  private String place() {
    String where = side == Side.UNSIDED ? "no side" : "the " + side.code() + " side";
    return digit == Digit.NONE ? where : where + ", " + digit.code();
  }
}
