package styloid.checks.faulty;

import java.util.List;
import java.util.Map;
import java.util.Set;
import styloid.model.TestId;
import styloid.spi.Labels;
import styloid.spi.TestDefinition;

/** Calls itself what another test is called. */
public final class ClaimsAnothersId extends Plain {
  @Override
  public TestDefinition definition() {
    TestDefinition own = super.definition();
    return new TestDefinition(
        new TestId("grip"),
        "9.0",
        own.order(),
        own.groups(),
        List.of(),
        List.of(),
        List.of(),
        Set.of(),
        new Labels(Map.of("en", Map.of("test.title", "Not grip"))));
  }
}
