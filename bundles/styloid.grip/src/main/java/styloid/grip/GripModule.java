package styloid.grip;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.osgi.service.component.annotations.Component;
import styloid.model.ItemId;
import styloid.model.PatientContext;
import styloid.model.Result;
import styloid.model.Side;
import styloid.spi.Sheet;
import styloid.spi.SheetBuilder;
import styloid.spi.TestDefinition;
import styloid.spi.TestModule;

/** Grip and pinch strength of both hands, beside published norms. */
@Component(service = TestModule.class)
public final class GripModule implements TestModule {
  private static final List<Side> HANDS = List.of(Side.RIGHT, Side.LEFT);

  private final NormChoice choice = new NormChoice();
  private final TestDefinition definition = GripDefinition.create(choice);
  private final NormResults norms = new NormResults(choice);
  private final Centiles centiles = new Centiles(choice);

  @Override
  public TestDefinition definition() {
    return definition;
  }

  @Override
  public List<Result> results(PatientContext context) {
    ArrayList<Result> results = new ArrayList<>(Calibration.of(context));
    for (Measure measure : Measure.values()) {
      for (Side side : HANDS) {
        results.addAll(TrialResults.of(context.snapshot(), measure, side));
        results.addAll(norms.ofHand(context, measure, side));
        results.addAll(Change.of(context, measure, side));
      }
      results.addAll(SideRatios.of(context, measure));
      if (measure == Measure.POWER) {
        results.addAll(LowStrength.of(context));
        results.addAll(norms.ofBest(context));
        results.add(centiles.of(context));
      }
    }
    HANDS.forEach(side -> results.addAll(Curves.of(context.snapshot(), side)));
    return results;
  }

  @Override
  public List<Sheet> sheets(PatientContext context, List<Result> results) {
    SheetBuilder sheet = new SheetBuilder(definition, context, results);
    ArrayList<Sheet> sheets = new ArrayList<>(GripSheets.summary(sheet));
    sheets.add(GripSheets.of(sheet, choice));
    return sheets;
  }

  @Override
  public Set<ItemId> safeItems() {
    return definition.itemsWithoutText();
  }
}
