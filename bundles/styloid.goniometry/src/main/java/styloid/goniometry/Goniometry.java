package styloid.goniometry;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.osgi.service.component.annotations.Component;
import styloid.model.Digit;
import styloid.model.ItemId;
import styloid.model.PatientContext;
import styloid.model.Result;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.spi.ResultDefinition;
import styloid.spi.Sheet;
import styloid.spi.SheetBuilder;
import styloid.spi.TestDefinition;
import styloid.spi.TestModule;

/**
 * Joint motion of both limbs by the neutral-zero method: each end of an arc in degrees from
 * neutral, past neutral positive and short of it negative.
 *
 * <p>A result is given only where its leading entry is there (a value or an absence): an arc when
 * either end is, a total when any of its joints is, a lag when the passive end is, a change when
 * both visits have the motion. So an empty evaluation gives no results and one finger gives those
 * of one finger. A result that is given is computed, or incomplete with what is missing, or
 * unavailable with the reason.
 */
@Component(service = TestModule.class)
public final class Goniometry implements TestModule {
  static final TestId ID = new TestId("goniometry");

  private final List<Rule> rules = rules();
  private final TestDefinition definition = GoniometryDefinition.build(declared(rules));

  private static List<Rule> rules() {
    References references = new References();
    Populations active = Populations.active();
    Populations passive = Populations.passive();
    ArrayList<Rule> rules = new ArrayList<>();
    for (Plane plane : Planes.ALL) {
      if (plane.hasArc()) {
        rules.add(new ArcRule(plane));
      }
      for (Motion motion : plane.ends()) {
        addRules(plane, motion, references, active, passive, rules);
      }
    }
    rules.add(TotalRule.ofFingers());
    rules.add(new StricklandRule());
    rules.add(TotalRule.ofThumb());
    rules.add(new HandRule.Opposition());
    rules.add(new BuckGramckoRule());
    rules.add(new HandRule.Span());
    return List.copyOf(rules);
  }

  private static void addRules(
      Plane plane,
      Motion motion,
      References references,
      Populations active,
      Populations passive,
      List<Rule> rules) {
    if (motion.pastNeutral()) {
      rules.add(new NeutralRule(plane, motion));
    }
    rules.add(new SideRule(plane, motion));
    rules.add(new ReferenceRule(plane, motion, references));
    if (active.has(motion)) {
      rules.add(new NormRule(plane, motion, active));
    }
    if (passive.has(motion)) {
      rules.add(new PopulationRule(plane, motion, passive));
    }
    rules.add(new LagRule(plane, motion, references));
    rules.add(new ChangeRule(plane, motion));
  }

  private static List<ResultDefinition> declared(List<Rule> rules) {
    ArrayList<ResultDefinition> all = new ArrayList<>();
    rules.forEach(rule -> all.addAll(rule.definitions()));
    return all;
  }

  @Override
  public TestDefinition definition() {
    return definition;
  }

  @Override
  public List<Result> results(PatientContext context) {
    Readings readings = Readings.of(context);
    ArrayList<Result> results = new ArrayList<>();
    for (Rule rule : rules) {
      for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
        for (Digit digit : EnumSet.copyOf(rule.digits())) {
          rule.addResults(readings, new Place(side, digit), results);
        }
      }
    }
    return results;
  }

  @Override
  public List<Sheet> sheets(PatientContext context, List<Result> results) {
    SheetBuilder sheet = new SheetBuilder(definition, context, results);
    ArrayList<Sheet> sheets =
        new ArrayList<>(MotionSummary.of(sheet, Settings.of(context.evaluation().choices())));
    sheets.add(GoniometrySheets.of(sheet));
    return sheets;
  }

  @Override
  public Set<ItemId> safeItems() {
    return definition.itemsWithoutText();
  }
}
