package styloid.spi;

/** How long work tells how far it is, and learns that it is no longer wanted. */
public interface Progress {
  /** {@code done} of {@code of} steps are done. Called on the worker. */
  void step(int done, int of);

  /** Whether to stop; asked between steps. */
  boolean cancelled();

  /** Tells nobody and never stops. */
  static Progress none() {
    return new Progress() {
      @Override
      public void step(int done, int of) {
        // nobody is watching
      }

      @Override
      public boolean cancelled() {
        return false;
      }
    };
  }
}
