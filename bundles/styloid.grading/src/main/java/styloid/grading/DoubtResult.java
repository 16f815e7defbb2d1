package styloid.grading;

import static styloid.grading.GradingDefinition.ID;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import styloid.grading.Observed.Range;
import styloid.model.Choice;
import styloid.model.Explanation;
import styloid.model.Message;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.Source;
import styloid.model.Unit;

/** What speaks against the grade of one motion; shown beside it, never instead of it. */
final class DoubtResult {
  private static final BigDecimal DEFAULT_ERROR = BigDecimal.valueOf(5);
  private static final Pattern DEGREES = Pattern.compile("\\d{1,2}(\\.\\d{1,3})?");

  /** Goniometry's own setting, so that both judge by the same error. */
  /** Codes of its value that are a doubt. */
  static final Set<String> DOUBTS =
      Set.of(
          "observations-contradict",
          "reaches-passive",
          "several-doubts",
          "short-of-passive",
          "substitution",
          "typed-contradicted");

  private static final String ERROR_CHOICE = "goniometry.error";

  private static final Source ERROR_SOURCE =
      Source.memory("Customary error of 5 degrees, same rater, larger between raters");

  private final Place place;

  /** Words of each doubt by its code. */
  private final LinkedHashMap<String, Message> doubts = new LinkedHashMap<>();

  private DoubtResult(Place place) {
    this.place = place;
  }

  static Result of(Place place) {
    return new DoubtResult(place).result();
  }

  private Result result() {
    Decision decision = place.decision();
    Optional<Grade> grade = place.grade();
    if (decision instanceof Decision.Contradiction both) {
      doubts.put("observations-contradict", GradeResult.contradiction(place, both));
    } else {
      typed();
    }
    if (place.substituted() && grade.filter(Grade::strong).isPresent()) {
      doubts.put("substitution", Message.of(ID, "doubt.substitution", grade.get().code()));
    }
    measured();
    if (grade.isEmpty() && doubts.isEmpty() && decision instanceof Decision.Needs needs) {
      Message reason = GradeResult.missing(place, needs.next());
      return Result.incomplete(
          place.result("doubt"), reason, List.of(place.key(needs.next())), why(List.of(reason)));
    }
    ArrayList<Message> steps = new ArrayList<>(doubts.values());
    if (steps.isEmpty()) {
      steps.add(Message.of(ID, "doubt.nothing"));
    }
    return Result.computed(place.result("doubt"), new Choice(code()), why(steps));
  }

  private String code() {
    return doubts.isEmpty()
        ? "no-doubt"
        : doubts.size() > 1 ? "several-doubts" : doubts.keySet().iterator().next();
  }

  private void typed() {
    Optional<Grade> typed = place.typed();
    Observed seen = place.observed();
    boolean asDerived =
        place.decision() instanceof Decision.Given given
            && typed.filter(given.grade()::equals).isPresent();
    if (typed.isPresent()
        && !asDerived
        && !GradeRule.possible(seen, place.motion().criteria()).contains(typed.get())) {
      Message derived =
          place.decision() instanceof Decision.Given given
              ? Message.of(ID, "choice." + given.grade().code())
              : Message.of(ID, "doubt.other-grade");
      doubts.put(
          "typed-contradicted",
          Message.of(ID, "doubt.typed-contradicted", typed.get().code(), derived));
    }
  }

  private void measured() {
    Optional<BigDecimal> active = place.measured("active");
    Optional<BigDecimal> passive = place.measured("passive");
    Optional<Range> range = place.observed().range();
    if (active.isEmpty() || passive.isEmpty() || range.isEmpty() || range.get() == Range.NONE) {
      return;
    }
    BigDecimal lag = passive.get().subtract(active.get());
    boolean full = range.get() == Range.FULL;
    boolean reached = lag.compareTo(error()) <= 0;
    if (full != reached) {
      String code = full ? "short-of-passive" : "reaches-passive";
      doubts.put(
          code,
          Message.of(
              ID,
              "doubt." + code,
              degrees(active.get()),
              degrees(passive.get()),
              degrees(error())));
    }
  }

  private BigDecimal error() {
    Map<String, String> choices = place.context().evaluation().choices();
    String set = choices.getOrDefault(ERROR_CHOICE, "");
    return DEGREES.matcher(set).matches() ? new BigDecimal(set) : DEFAULT_ERROR;
  }

  private static Quantity degrees(BigDecimal amount) {
    return new Quantity(amount, Unit.DEGREE);
  }

  private Explanation why(List<Message> steps) {
    ArrayList<Source> sources = new ArrayList<>(List.of(Source.commonPractice()));
    if (place.measured("passive").isPresent()) {
      sources.add(ERROR_SOURCE);
    }
    return new Explanation(steps, sources, "grade-doubt", Optional.empty());
  }
}
