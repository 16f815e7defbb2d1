package styloid.session;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import styloid.session.Session.Change;

/** Who wants to hear of changes; one that fails does not keep the others from hearing. */
final class Listeners {
  private static final System.Logger LOG = System.getLogger(Listeners.class.getName());

  private final List<Consumer<Change>> listeners = new CopyOnWriteArrayList<>();

  AutoCloseable add(Consumer<Change> listener) {
    listeners.add(listener);
    return () -> listeners.remove(listener);
  }

  void tell(Change change) {
    for (Consumer<Change> listener : listeners) {
      try {
        listener.accept(change);
      } catch (RuntimeException e) {
        LOG.log(System.Logger.Level.WARNING, "a listener failed", e);
      }
    }
  }
}
