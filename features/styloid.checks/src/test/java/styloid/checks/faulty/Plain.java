package styloid.checks.faulty;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import styloid.model.Demand;
import styloid.model.Item;
import styloid.model.ItemKind;
import styloid.model.PatientContext;
import styloid.model.Region;
import styloid.model.Result;
import styloid.model.TestId;
import styloid.spi.Group;
import styloid.spi.Guide;
import styloid.spi.Labels;
import styloid.spi.TestDefinition;
import styloid.spi.TestModule;

/** A module without fault, for the others to break. */
public class Plain implements TestModule {
  private String id() {
    return "faulty-" + getClass().getSimpleName().toLowerCase(Locale.ROOT);
  }

  @Override
  public TestDefinition definition() {
    Group group =
        new Group(
            "one",
            Region.HAND,
            Set.of(Region.HAND),
            List.of(Item.bothSides("note", new ItemKind.Words(10), Demand.NONE)),
            Group.Walk.ALTERNATING,
            Group.Layout.LIST,
            List.of(),
            Guide.none());
    return new TestDefinition(
        new TestId(id()),
        "1.0",
        900,
        List.of(group),
        List.of(),
        List.of(),
        List.of(),
        Set.of(),
        new Labels(Map.of("en", Map.of("test.title", "Faulty"))));
  }

  @Override
  public List<Result> results(PatientContext context) {
    return List.of();
  }
}
