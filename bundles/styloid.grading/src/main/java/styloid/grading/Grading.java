package styloid.grading;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Set;
import org.osgi.service.component.annotations.Component;
import styloid.model.Digit;
import styloid.model.ItemId;
import styloid.model.Outcome;
import styloid.model.PatientContext;
import styloid.model.Result;
import styloid.model.Side;
import styloid.spi.Group;
import styloid.spi.Sheet;
import styloid.spi.SheetBuilder;
import styloid.spi.TestDefinition;
import styloid.spi.TestModule;

/** Grades the strength of each motion by position and hand resistance. */
@Component(service = TestModule.class)
public final class Grading implements TestModule {
  private static final List<Side> SIDES = List.of(Side.RIGHT, Side.LEFT);

  private final List<Motion> catalogue = Motion.catalogue(Muscle.table());
  private final List<Supply> supplies = Supply.all(catalogue);
  private final TestDefinition definition = GradingDefinition.build(catalogue);

  @Override
  public TestDefinition definition() {
    return definition;
  }

  @Override
  public List<Result> results(PatientContext context) {
    ArrayList<Result> results = new ArrayList<>();
    EnumMap<Side, List<Place>> places = new EnumMap<>(Side.class);
    SIDES.forEach(side -> places.put(side, new ArrayList<>()));
    for (int i = 0; i < catalogue.size(); i++) {
      Motion motion = catalogue.get(i);
      Group group = definition.groups().get(i);
      for (Side side : SIDES) {
        for (Digit digit : motion.eachDigit()) {
          Place place = new Place(context, motion, group, side, digit);
          places.get(side).add(place);
          results.add(GradeResult.of(place));
          results.add(DoubtResult.of(place));
        }
      }
    }
    for (Supply supply : supplies) {
      SIDES.forEach(side -> results.addAll(RollUp.of(supply, side, places.get(side))));
    }
    return results;
  }

  /** Leaves out what is merely not begun, or every visit would print the whole catalogue. */
  @Override
  public List<Sheet> sheets(PatientContext context, List<Result> results) {
    List<Result> begun = results.stream().filter(r -> begun(r, context)).toList();
    SheetBuilder sheet = new SheetBuilder(definition, context, begun);
    ArrayList<Sheet> sheets = new ArrayList<>(GradingSheets.summary(sheet, catalogue));
    sheets.add(GradingSheets.of(sheet, catalogue, supplies));
    return sheets;
  }

  private static boolean begun(Result result, PatientContext context) {
    return !(result.outcome() instanceof Outcome.Incomplete incomplete)
        || incomplete.missing().stream()
            .anyMatch(
                key ->
                    !key.item().value().endsWith("-range")
                        || context.snapshot().entry(key).isPresent());
  }

  @Override
  public Set<ItemId> safeItems() {
    return definition.itemsWithoutText();
  }
}
