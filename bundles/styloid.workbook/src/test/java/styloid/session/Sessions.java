package styloid.session;

import java.util.List;
import styloid.spi.Exporter;
import styloid.spi.TestModule;

/** A session without a container and without a store, for tests of what it exports. */
public final class Sessions {
  private Sessions() {}

  public static SessionService with(List<TestModule> modules, List<Exporter> exporters) {
    SessionService session = new SessionService();
    modules.forEach(session::addModule);
    exporters.forEach(session::addExporter);
    session.settle();
    return session;
  }

  public static void close(SessionService session) {
    session.deactivate();
  }
}
