package styloid.model;

import java.util.List;
import java.util.Optional;

/**
 * How a result came about.
 *
 * @param steps the calculation in order, each a full sentence with its numbers
 * @param sources at least one
 * @param rule name of the page in docs/rules, such as {@code tam}
 * @param formula the same calculation as a spreadsheet formula over {@link ItemKey#cellName()}s,
 *     giving the value in the result's unit; empty where a spreadsheet cannot say it
 * @param error the error of measuring the result was judged against, where it states one
 */
public record Explanation(
    List<Message> steps,
    List<Source> sources,
    String rule,
    Optional<String> formula,
    Optional<ErrorRange> error) {

  /** How a result came about that states no error of measuring. */
  public Explanation(
      List<Message> steps, List<Source> sources, String rule, Optional<String> formula) {
    this(steps, sources, rule, formula, Optional.empty());
  }

  public Explanation {
    steps = List.copyOf(steps);
    sources = List.copyOf(sources);
    if (sources.isEmpty()) {
      throw new IllegalArgumentException("a result must name its source");
    }
    if (steps.isEmpty()) {
      throw new IllegalArgumentException("a result must show its steps");
    }
    Codes.slug("rule", rule);
    java.util.Objects.requireNonNull(error, "error");
  }

  /** The same, with the error of measuring it was judged against. */
  public Explanation withError(ErrorRange stated) {
    return new Explanation(steps, sources, rule, formula, Optional.of(stated));
  }

  /** The weakest status among the sources. */
  public SourceStatus status() {
    SourceStatus weakest = SourceStatus.VERIFIED;
    for (Source source : sources) {
      if (source.status().compareTo(weakest) > 0) {
        weakest = source.status();
      }
    }
    return weakest;
  }
}
