package styloid.spi;

import java.util.Map;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;

/**
 * Evaluates spreadsheet formulas (a part of OpenFormula, ISO/IEC 26300-2), offered as an OSGi
 * service. May be called from any thread.
 */
@ProviderType
public interface Formulas {

  /**
   * Evaluates a formula.
   *
   * @param formula without a leading equals sign; names are lower-case letters, digits and
   *     underscores and begin with a letter
   * @param values a number ({@link Double}) or text ({@link String}) for every name of the formula
   */
  Answer evaluate(String formula, Map<String, Object> values);

  /** Does once what makes the first formula slow; called while the suite is idle. */
  default void warmUp() {}

  /**
   * What a formula came to.
   *
   * @param number empty when the formula gives no number
   * @param fault then why, in a spreadsheet's own sign such as {@code #DIV/0!}; else empty
   */
  record Answer(Optional<Double> number, String fault) {
    public static Answer of(double number) {
      return new Answer(Optional.of(number), "");
    }

    public static Answer none(String fault) {
      return new Answer(Optional.empty(), fault);
    }
  }
}
