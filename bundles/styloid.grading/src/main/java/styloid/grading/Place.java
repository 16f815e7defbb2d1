package styloid.grading;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import styloid.grading.Observed.Felt;
import styloid.grading.Observed.Hold;
import styloid.grading.Observed.Observation;
import styloid.grading.Observed.Range;
import styloid.grading.Observed.Reduced;
import styloid.model.Absence;
import styloid.model.Codes;
import styloid.model.Digit;
import styloid.model.Item;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.Message;
import styloid.model.PatientContext;
import styloid.model.Precaution;
import styloid.model.Region;
import styloid.model.ResultKey;
import styloid.model.Side;
import styloid.model.Unit;
import styloid.spi.Group;
import styloid.spi.Withheld;

/** One motion of one side and digit in one evaluation: what stands in the record about it. */
final class Place {
  private static final Map<String, Range> RANGES = byCode(Range.values());
  private static final Map<String, Hold> HOLDS = byCode(Hold.values());
  private static final Map<String, Reduced> REDUCED = byCode(Reduced.values());
  private static final Map<String, Felt> FELT = byCode(Felt.values());
  private static final List<Observation> ALL = List.of(Observation.values());
  private static final List<Observation> RANGE_ONLY =
      ALL.stream().filter(what -> what != Observation.REDUCED).toList();

  private final PatientContext context;
  private final Motion motion;
  private final Side side;
  private final Digit digit;
  private final EnumMap<Observation, ItemKey> keys = new EnumMap<>(Observation.class);
  private final List<Precaution> resistanceLimits;
  private final Observed observed;
  private final Optional<Grade> typed;
  private final Decision decision;
  private final Optional<Message> inWords;

  /** A motion as recorded; {@code group} is the motion's in the definition. */
  Place(PatientContext context, Motion motion, Group group, Side side, Digit digit) {
    this.context = context;
    this.motion = motion;
    this.side = side;
    this.digit = digit;
    for (Observation what : Observation.values()) {
      keys.put(what, itemKey(what.code()));
    }
    resistanceLimits = limits(group);
    observed =
        new Observed(
            answer(Observation.RANGE, RANGES),
            answer(Observation.HOLD, HOLDS),
            observations().contains(Observation.REDUCED)
                ? answer(Observation.REDUCED, REDUCED)
                : Optional.empty(),
            answer(Observation.CONTRACTION, FELT),
            resistanceWithheld());
    typed = context.snapshot().choice(itemKey("typed")).flatMap(Grade::of);
    decision = GradeRule.decide(observed, scheme(), motion.criteria());
    inWords = grade().map(this::inWords);
  }

  private List<Precaution> limits(Group group) {
    if (context.precautions().isEmpty()) {
      return List.of();
    }
    ItemKey hold = key(Observation.HOLD);
    Item item =
        group.items().stream().filter(i -> i.id().equals(hold.item())).findFirst().orElseThrow();
    return Withheld.by(group, item, hold, context.precautions(), context.evaluation().date());
  }

  private <E> Optional<E> answer(Observation what, Map<String, E> answers) {
    return context.snapshot().choice(key(what)).map(answers::get);
  }

  private static <E extends Enum<E>> Map<String, E> byCode(E[] answers) {
    return Stream.of(answers).collect(Collectors.toUnmodifiableMap(Codes::of, answer -> answer));
  }

  private boolean resistanceWithheld() {
    Optional<Absence> absence = absence(Observation.HOLD);
    return absence.isPresent()
        ? absence.get().reason() == Absence.Reason.PRECAUTION
        : !resistanceLimits.isEmpty();
  }

  PatientContext context() {
    return context;
  }

  Motion motion() {
    return motion;
  }

  Side side() {
    return side;
  }

  Digit digit() {
    return digit;
  }

  ItemKey key(Observation what) {
    return keys.get(what);
  }

  private ItemKey itemKey(String what) {
    return new ItemKey(GradingDefinition.ID, motion.names().items().get(what), side, digit, 1);
  }

  /**
   * Goniometry names the thumb as the digit it is; here its motions are the only ones so called.
   */
  private ItemKey goniometryKey(ItemId item) {
    Digit measured = motion.region() == Region.THUMB ? Digit.THUMB : digit;
    return new ItemKey(GradingDefinition.GONIOMETRY, item, side, measured, 1);
  }

  ResultKey result(String what) {
    return new ResultKey(GradingDefinition.ID, motion.names().results().get(what), side, digit);
  }

  /** What can be observed of this motion, in the order it is asked. */
  List<Observation> observations() {
    return motion.criteria() == Criteria.RANGE_ONLY ? RANGE_ONLY : ALL;
  }

  Observed observed() {
    return observed;
  }

  Optional<Absence> absence(Observation what) {
    return context.snapshot().absence(key(what));
  }

  /** Precautions that withhold resistance on the day of the evaluation. */
  List<Precaution> resistanceLimits() {
    return resistanceLimits;
  }

  boolean substituted() {
    return context.snapshot().choice(itemKey("substitution")).filter("yes"::equals).isPresent();
  }

  Scheme scheme() {
    return Scheme.of(context.evaluation().choices());
  }

  /** What the observations come to, whatever was typed. */
  Decision decision() {
    return decision;
  }

  Optional<Grade> typed() {
    return typed;
  }

  /** The grade in force: typed, else derived. */
  Optional<Grade> grade() {
    return typed.or(
        () ->
            decision instanceof Decision.Given given
                ? Optional.of(given.grade())
                : Optional.empty());
  }

  /** The motion, digit and grade in force, in words; empty where there is no grade. */
  Optional<Message> inWords() {
    return inWords;
  }

  private Message inWords(Grade grade) {
    Message name = Message.of(GradingDefinition.ID, "group." + motion.id());
    Message words = Message.of(GradingDefinition.ID, "choice." + grade.code());
    return digit == Digit.NONE
        ? Message.of(GradingDefinition.ID, "step.motion", name, words)
        : Message.of(GradingDefinition.ID, "step.motion-of-digit", name, digit, words);
  }

  /** End of the {@code active} or {@code passive} range in degrees; more motion is greater. */
  Optional<BigDecimal> measured(String how) {
    return Optional.ofNullable(motion.names().measured().get(how))
        .flatMap(item -> context.snapshot().quantity(goniometryKey(item)))
        .filter(q -> q.unit() == Unit.DEGREE)
        .map(q -> q.amount());
  }
}
