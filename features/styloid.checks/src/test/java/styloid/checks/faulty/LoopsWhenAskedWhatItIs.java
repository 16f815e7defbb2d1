package styloid.checks.faulty;

import styloid.spi.TestDefinition;

/** Never says what it is. */
public final class LoopsWhenAskedWhatItIs extends Plain {
  @Override
  public TestDefinition definition() {
    while (!Thread.currentThread().isInterrupted() || hashCode() != 0) {
      Thread.onSpinWait();
    }
    return super.definition();
  }
}
