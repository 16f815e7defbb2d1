package styloid.checks.faulty;

/** Fails before it can be asked anything. */
public final class ThrowsWhenMade extends Plain {
  public ThrowsWhenMade() {
    throw new IllegalStateException("no");
  }
}
