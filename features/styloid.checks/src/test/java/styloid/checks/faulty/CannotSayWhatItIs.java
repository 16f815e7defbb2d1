package styloid.checks.faulty;

import styloid.spi.TestDefinition;

/** Fails to link while it says what it is. */
public final class CannotSayWhatItIs extends Plain {
  @Override
  public TestDefinition definition() {
    throw new NoClassDefFoundError("some/Helper");
  }
}
