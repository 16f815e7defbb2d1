package styloid.workbook;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import styloid.model.Demand;
import styloid.model.Digit;
import styloid.model.Explanation;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.ItemKind;
import styloid.model.Message;
import styloid.model.PatientContext;
import styloid.model.Quantity;
import styloid.model.Region;
import styloid.model.Result;
import styloid.model.ResultId;
import styloid.model.ResultKey;
import styloid.model.Side;
import styloid.model.Source;
import styloid.model.TestId;
import styloid.model.Unit;
import styloid.spi.Group;
import styloid.spi.Guide;
import styloid.spi.Labels;
import styloid.spi.ResultDefinition;
import styloid.spi.Setting;
import styloid.spi.TestDefinition;

/** A test of our own for these tests: a few items of each kind and results with formulas. */
final class SampleModule {
  static final TestId ID = new TestId("sample");
  private static final Source NORM =
      Source.memory("Invented N. 2020. A norm for tests. J Made Up 1:1-2");
  private static final BigDecimal NORM_MEAN = new BigDecimal("28.3");
  private static final BigDecimal NORM_SD = new BigDecimal("5.9");

  private SampleModule() {}

  static TestDefinition definition() {
    return new TestDefinition(
            ID,
            "1.2",
            10,
            List.of(
                group("motion", Region.WRIST, look(), push()),
                group("digits", Region.FINGERS, bend()),
                group("power", Region.HAND, squeeze()),
                group("notes", Region.LIMB, remark())),
            List.of(),
            List.of(),
            List.of(
                result("mean", Optional.of(Unit.KILOGRAM_FORCE), 1),
                result("sd", Optional.of(Unit.KILOGRAM_FORCE), 2),
                result("z", Optional.of(Unit.NUMBER), 2),
                result("percentile", Optional.of(Unit.PERCENT), 1)),
            Set.of(),
            labels())
        .withSettings(
            List.of(new Setting(ID + ".norm", List.of("one-1999", "two-2001"), "one-1999")));
  }

  private static Group group(String id, Region region, Item... items) {
    return new Group(
        id,
        region,
        Set.of(region),
        List.of(items),
        Group.Walk.SIDE_BY_SIDE,
        Group.Layout.LIST,
        List.of(),
        Guide.none());
  }

  private static Item look() {
    ItemKind kind = ItemKind.Choices.of("full", "limited", "unable");
    return Item.bothSides("look", kind, Demand.ACTIVE_MOTION);
  }

  private static Item push() {
    return Item.bothSides("push", ItemKind.Choices.of("yes", "no"), Demand.RESISTANCE);
  }

  private static Item bend() {
    ItemKind kind = ItemKind.Number.of(Unit.DEGREE, -40, -20, 120, 160, 0);
    return Item.bothSides("bend", kind, Demand.ACTIVE_MOTION).withDigits(Item.FINGERS);
  }

  private static Item squeeze() {
    ItemKind kind = ItemKind.Number.of(Unit.KILOGRAM_FORCE, 0, 5, 70, 120, 2);
    return Item.bothSides("squeeze", kind, Demand.GRIP_OR_PINCH).withTrials(3);
  }

  private static Item remark() {
    return Item.unsided("remark", new ItemKind.Words(10_000));
  }

  private static ResultDefinition result(String id, Optional<Unit> unit, int decimals) {
    return new ResultDefinition(
        new ResultId(id), unit, decimals, Item.BOTH, Item.NO_DIGIT, Optional.of("power"));
  }

  static List<Result> results(PatientContext context) {
    ArrayList<Result> results = new ArrayList<>();
    for (Side side : EnumSet.of(Side.RIGHT, Side.LEFT)) {
      ArrayList<ItemKey> missing = new ArrayList<>();
      ArrayList<Double> found = new ArrayList<>();
      for (int trial = 1; trial <= 3; trial++) {
        ItemKey key = Sample.key("squeeze", side, Digit.NONE, trial);
        Optional<Quantity> value = context.snapshot().quantity(key);
        value.ifPresentOrElse(
            q -> found.add(q.doubleIn(Unit.KILOGRAM_FORCE)), () -> missing.add(key));
      }
      if (missing.isEmpty()) {
        computed(side, found, results);
      } else {
        Message why = Message.of(ID, "missing");
        results.add(Result.incomplete(key("mean", side), why, missing, explain("mean", "1", NORM)));
      }
    }
    return results;
  }

  private static ResultKey key(String result, Side side) {
    return new ResultKey(ID, new ResultId(result), side, Digit.NONE);
  }

  private static void computed(Side side, List<Double> trials, List<Result> results) {
    double mean = trials.stream().mapToDouble(d -> d).sum() / 3;
    double squares = trials.stream().mapToDouble(d -> (d - mean) * (d - mean)).sum();
    double z = (mean - NORM_MEAN.doubleValue()) / NORM_SD.doubleValue();
    String list = trials(side);
    String average = "AVERAGE(" + list + ")";
    String zFormula = "(" + key("mean", side).cellName() + "-28.3)/5.9";
    results.add(result("mean", side, mean, Unit.KILOGRAM_FORCE, average));
    results.add(
        result("sd", side, Math.sqrt(squares / 2), Unit.KILOGRAM_FORCE, "STDEV.S(" + list + ")"));
    results.add(result("z", side, z, Unit.NUMBER, zFormula));
    String percentile = "100*NORM.S.DIST(" + key("z", side).cellName() + ",TRUE)";
    results.add(result("percentile", side, 100 * normal(z), Unit.PERCENT, percentile));
  }

  private static String trials(Side side) {
    ArrayList<String> names = new ArrayList<>();
    for (int trial = 1; trial <= 3; trial++) {
      names.add(Sample.key("squeeze", side, Digit.NONE, trial).cellName());
    }
    return String.join(",", names);
  }

  private static Result result(String id, Side side, double value, Unit unit, String formula) {
    Source source = id.equals("mean") || id.equals("sd") ? Source.commonPractice() : NORM;
    return Result.computed(key(id, side), Quantity.of(value, unit), explain(id, formula, source));
  }

  private static Explanation explain(String rule, String formula, Source source) {
    Message step = Message.of(ID, "step." + rule);
    return new Explanation(List.of(step), List.of(source), rule, Optional.of(formula));
  }

  /** The normal distribution by its series, good to 15 digits for the values met here. */
  private static double normal(double z) {
    BigDecimal x = new BigDecimal(z);
    BigDecimal term = x;
    BigDecimal sum = x;
    for (int k = 1; k < 120; k++) {
      term =
          term.multiply(x, MathContext.DECIMAL128)
              .multiply(x, MathContext.DECIMAL128)
              .divide(BigDecimal.valueOf(2L * k + 1), MathContext.DECIMAL128);
      sum = sum.add(term);
    }
    return 0.5 + sum.doubleValue() * Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI);
  }

  private static Labels labels() {
    return new Labels(
        Map.of(
            "en",
            Map.ofEntries(
                Map.entry("test.title", "Sample test"),
                Map.entry("group.motion", "Motion of the wrist"),
                Map.entry("group.digits", "Bending of the fingers"),
                Map.entry("group.power", "Squeeze, three trials"),
                Map.entry("group.notes", "Remarks"),
                Map.entry("item.look", "Wrist extension, look"),
                Map.entry("item.push", "Holds against a push"),
                Map.entry("item.bend", "Bend"),
                Map.entry("item.squeeze", "Squeeze"),
                Map.entry("item.remark", "Remark"),
                Map.entry("choice.full", "full"),
                Map.entry("choice.limited", "limited"),
                Map.entry("choice.unable", "unable"),
                Map.entry("result.mean", "Mean of three trials"),
                Map.entry("result.sd", "Standard deviation"),
                Map.entry("result.z", "z score"),
                Map.entry("result.percentile", "Percentile"),
                Map.entry("setting.sample.norm", "Norm"),
                Map.entry("setting.sample.norm.one-1999", "table of 1999"),
                Map.entry("setting.sample.norm.two-2001", "table of 2001"),
                Map.entry("step.mean", "The three trials are added and divided by 3."),
                Map.entry("step.sd", "Deviations from the mean, squared, summed, over 2, rooted."),
                Map.entry("step.z", "Mean minus 28.3 kg, divided by 5.9 kg."),
                Map.entry("step.percentile", "Share of the normal distribution below z."),
                Map.entry("missing", "incomplete: a trial is missing"),
                Map.entry(
                    "finding.weak", "The mean squeeze of {0} is weaker than the other side."))));
  }
}
