package styloid.goniometry;

import static styloid.goniometry.Calculation.degrees;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import styloid.model.Choice;
import styloid.model.ErrorRange;
import styloid.model.ItemKey;
import styloid.model.PatientContext;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.ResultId;
import styloid.model.Source;
import styloid.model.Unit;
import styloid.spi.ResultDefinition;

/**
 * Change of a motion since the newest earlier visit that has a value of it, in degrees, and what it
 * means against the minimal detectable change. A published SEM runs over joints from low to high: a
 * change below MDC90 of the low one is within error; from MDC90 (MDC95) of the high one on,
 * included, it is beyond error at 90 % (95 %); between, it depends on the joint. Given once the
 * motion has an entry and an earlier value.
 */
final class ChangeRule extends MotionRule {
  private final List<Part> parts = new ArrayList<>();

  private record Part(Mode mode, ResultId change, ResultId meaning) {}

  /** A value of an earlier visit. */
  private record Earlier(PatientContext.Past visit, BigDecimal degrees) {}

  ChangeRule(Plane plane, Motion motion) {
    super(plane, motion);
    for (Mode mode : Mode.values()) {
      String name = motion.id() + "-" + mode.code() + "-change";
      parts.add(new Part(mode, new ResultId(name), new ResultId(name + "-meaning")));
    }
  }

  @Override
  public List<ResultDefinition> definitions() {
    ArrayList<ResultDefinition> all = new ArrayList<>();
    for (Part part : parts) {
      all.add(number(part.change, Unit.DEGREE, 0));
      all.add(words(part.meaning));
    }
    return all;
  }

  @Override
  public void addResults(Readings readings, Place place, List<Result> to) {
    for (Part part : parts) {
      ItemKey key = place.key(motion(), part.mode);
      if (readings.entered(key)) {
        earlier(readings, key).ifPresent(e -> add(readings, key, e, place, part, to));
      }
    }
  }

  private static Optional<Earlier> earlier(Readings readings, ItemKey key) {
    for (PatientContext.Past past : readings.context().past()) {
      Optional<BigDecimal> value = past.snapshot().quantity(key).map(Readings::degrees);
      if (value.isPresent()) {
        return Optional.of(new Earlier(past, value.get()));
      }
    }
    return Optional.empty();
  }

  private void add(
      Readings readings, ItemKey key, Earlier before, Place place, Part part, List<Result> to) {
    Calculation change = new Calculation("joint-change", Source.commonPractice());
    Calculation meaning = new Calculation("joint-change-meaning", MeasurementError.MDC90_FORMULA);
    meaning.source(MeasurementError.MDC95_FORMULA);
    Optional<BigDecimal> now = readings.degrees(key);
    if (now.isEmpty()) {
      to.add(change.incomplete(place.result(part.change), List.of(key)));
      to.add(meaning.incomplete(place.result(part.meaning), List.of(key)));
      return;
    }
    BigDecimal gained = now.get().subtract(before.degrees);
    for (Calculation calculation : List.of(change, meaning)) {
      calculation.step(
          "change",
          degrees(now.get()),
          degrees(before.degrees),
          before.visit.evaluation().date().toString(),
          degrees(gained));
    }
    change.formula(key.cellName() + "-" + Calculation.literal(before.degrees));
    to.add(change.computed(place.result(part.change), gained, Unit.DEGREE));
    to.add(meaning(readings, gained.abs(), before, place, part, meaning));
  }

  private Result meaning(
      Readings readings,
      BigDecimal size,
      Earlier before,
      Place place,
      Part part,
      Calculation meaning) {
    if (readings.settings().semRefused()) {
      return meaning.unavailable(place.result(part.meaning), "sem-setting", Settings.SEM);
    }
    boolean same =
        before.visit.evaluation().therapist().equals(readings.context().evaluation().therapist());
    Optional<MeasurementError.Sem> sem =
        readings
            .settings()
            .sem()
            .map(own -> new MeasurementError.Sem(own, own, MeasurementError.CLINIC))
            .or(() -> MeasurementError.sem(motion().region(), same));
    if (sem.isEmpty()) {
      return meaning.unavailable(place.result(part.meaning), "no-sem", Settings.SEM);
    }
    BigDecimal low90 = MeasurementError.mdc90(sem.get().low());
    BigDecimal high90 = MeasurementError.mdc90(sem.get().high());
    BigDecimal high95 = MeasurementError.mdc95(sem.get().high());
    meaning.source(sem.get().source());
    meaning.error(
        new ErrorRange(
            motion().item(part.mode),
            new Quantity(low90, Unit.DEGREE),
            new Quantity(high90, Unit.DEGREE)));
    meaning
        .step("sem", degrees(sem.get().low()), degrees(sem.get().high()))
        .step("mdc90", degrees(low90), degrees(high90))
        .step("mdc95", degrees(MeasurementError.mdc95(sem.get().low())), degrees(high95));
    String code =
        size.compareTo(high95) >= 0
            ? "beyond-95"
            : size.compareTo(high90) >= 0
                ? "beyond-90"
                : size.compareTo(low90) >= 0 ? "depends-on-joint" : "within-error";
    return meaning.computed(place.result(part.meaning), new Choice(code));
  }
}
