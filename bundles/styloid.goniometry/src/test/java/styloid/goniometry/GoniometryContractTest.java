package styloid.goniometry;

import styloid.spi.TestModule;
import styloid.testkit.TestModuleContract;

class GoniometryContractTest extends TestModuleContract {
  private final Goniometry module = new Goniometry();

  @Override
  protected TestModule module() {
    return module;
  }
}
