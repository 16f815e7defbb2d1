package styloid.goniometry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import styloid.spi.Setting;
import styloid.spi.TestModule;
import styloid.testkit.TestModuleContract;

class GoniometryContractTest extends TestModuleContract {
  private final Goniometry module = new Goniometry();

  @Override
  protected TestModule module() {
    return module;
  }

  @Test
  void everyTableOfNormalValuesMayBeChosenAndErrorsAreDegrees() {
    Setting reference = module.definition().setting("goniometry.reference").orElseThrow();
    assertEquals(List.copyOf(new References().codes()), reference.codes());
    assertEquals("aaos", reference.preset());
    Setting error = module.definition().setting("goniometry.error").orElseThrow();
    assertEquals("5", error.preset());
    for (String degrees : error.codes()) {
      assertEquals(
          Optional.of(new BigDecimal(degrees)),
          Settings.of(Map.of("goniometry.error", degrees)).error());
    }
  }
}
