package clinic.webspan;

import styloid.spi.TestModule;
import styloid.testkit.TestModuleContract;

/** The contract every module keeps to. Add tests of your own for the rule. */
class WebSpanTest extends TestModuleContract {
  @Override
  protected TestModule module() {
    return new WebSpan();
  }
}
