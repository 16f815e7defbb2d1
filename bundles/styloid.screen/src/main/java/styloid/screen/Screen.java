package styloid.screen;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.osgi.service.component.annotations.Component;
import styloid.model.ItemId;
import styloid.model.PatientContext;
import styloid.model.Result;
import styloid.spi.Sheet;
import styloid.spi.SheetBuilder;
import styloid.spi.TestDefinition;
import styloid.spi.TestModule;

/** Looks over the active motion of both limbs and puts forward what falls short. */
@Component(service = TestModule.class)
public final class Screen implements TestModule {
  private final TestDefinition definition = ScreenDefinition.build();

  @Override
  public TestDefinition definition() {
    return definition;
  }

  @Override
  public List<Result> results(PatientContext context) {
    return new ScreenResults(context.snapshot()).all();
  }

  @Override
  public List<Sheet> sheets(PatientContext context, List<Result> results) {
    SheetBuilder sheet = new SheetBuilder(definition, context, results);
    ArrayList<Sheet> sheets = new ArrayList<>(ScreenSheets.summary(sheet));
    sheets.add(ScreenSheets.of(sheet));
    return sheets;
  }

  @Override
  public Set<ItemId> safeItems() {
    return definition.itemsWithoutText();
  }
}
