package styloid.custom;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import styloid.exchange.json.Where;
import styloid.model.Caution;
import styloid.model.Digit;
import styloid.model.ItemId;
import styloid.model.ResultId;
import styloid.model.Side;
import styloid.model.Source;
import styloid.model.TestId;
import styloid.model.Unit;
import styloid.model.norm.NormTable;
import styloid.spi.Group;

/**
 * A declared test as written, before its formulas are understood.
 *
 * @param numbers the number each answer stands for, by item and code
 * @param places where each item stands
 */
record Draft(
    TestId id,
    String version,
    int order,
    Source source,
    List<Caution> cautions,
    List<String> testCautions,
    List<Group> groups,
    Map<ItemId, Map<String, BigDecimal>> numbers,
    Map<ItemId, Where> places,
    List<Norm> norms,
    List<Outcome> results) {

  /** A norm table under the name formulas know it by. */
  record Norm(Where where, String id, NormTable table, Map<String, String> keys) {}

  /**
   * A result as written.
   *
   * @param formula empty when it is a class
   * @param of name of what is put into classes; empty where they go by answers alone
   */
  record Outcome(
      Where where,
      ResultId id,
      Optional<Unit> unit,
      int decimals,
      Optional<Set<Side>> sides,
      Optional<Set<Digit>> digits,
      Optional<Text> formula,
      Optional<Text> of,
      List<Limit> classes,
      Optional<Source> source) {}

  /** Text and where it stands. */
  record Text(Where where, String text) {}

  /**
   * One class: an answer that leads to it, or a band of numbers.
   *
   * @param when the item and its codes; empty for a band
   */
  record Limit(Where where, String code, Band band, Optional<When> when) {}

  /** Answers of an item that lead to a class. */
  record When(Text item, List<Text> codes) {}

  /** A band of numbers; each end says whether it is included. */
  record Band(
      Optional<BigDecimal> low,
      boolean lowIncluded,
      Optional<BigDecimal> high,
      boolean highIncluded) {

    boolean holds(BigDecimal number) {
      int below = low.map(number::compareTo).orElse(1);
      int above = high.map(number::compareTo).orElse(-1);
      return (below > 0 || below == 0 && lowIncluded) && (above < 0 || above == 0 && highIncluded);
    }

    boolean empty() {
      int width = low.isEmpty() || high.isEmpty() ? 1 : high.get().compareTo(low.get());
      return width < 0 || width == 0 && !(lowIncluded && highIncluded);
    }

    boolean overlaps(Band other) {
      return !endsBefore(other) && !other.endsBefore(this);
    }

    private boolean endsBefore(Band next) {
      if (high.isEmpty() || next.low.isEmpty()) {
        return false;
      }
      int gap = next.low.get().compareTo(high.get());
      return gap > 0 || gap == 0 && !(highIncluded && next.lowIncluded);
    }
  }
}
