package styloid.goniometry;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import styloid.model.Digit;
import styloid.model.Item;
import styloid.model.Result;
import styloid.model.ResultId;
import styloid.model.Unit;
import styloid.spi.ResultDefinition;

/** A calculation: the results it declares and those it gives for one evaluation. */
interface Rule {
  /** Digits it is done for; {@link Digit#NONE} alone for a whole joint. */
  Set<Digit> digits();

  /** Group its results are shown beside. */
  String group();

  List<ResultDefinition> definitions();

  /** Adds the results at one limb or digit, if their leading entry is there. */
  void addResults(Readings readings, Place place, List<Result> to);

  default ResultDefinition number(ResultId id, Unit unit, int decimals) {
    return new ResultDefinition(
        id, Optional.of(unit), decimals, Item.BOTH, digits(), Optional.of(group()));
  }

  /** A result that is a choice or text. */
  default ResultDefinition words(ResultId id) {
    return new ResultDefinition(id, Optional.empty(), 0, Item.BOTH, digits(), Optional.of(group()));
  }
}
