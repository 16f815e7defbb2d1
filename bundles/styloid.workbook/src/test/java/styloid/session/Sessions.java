package styloid.session;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.util.List;
import java.util.Optional;
import styloid.model.PatientId;
import styloid.model.PatientRecord;
import styloid.spi.Exporter;
import styloid.spi.TestModule;
import styloid.store.CaseloadRow;

/** A session without a container, for tests of what it exports. */
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

  /** Where records come from instead of a store. */
  public interface Shelf {
    List<CaseloadRow> rows();

    Optional<PatientRecord> record(PatientId id);
  }

  /** The same session with these records as its store. */
  public static Session over(SessionService session, Shelf shelf) {
    return (Session)
        Proxy.newProxyInstance(
            Sessions.class.getClassLoader(),
            new Class<?>[] {Session.class},
            (proxy, method, args) -> {
              switch (method.getName()) {
                case "caseload":
                  return shelf.rows();
                case "patientRecord":
                  return shelf.record((PatientId) args[0]);
                default:
                  try {
                    return method.invoke(session, args);
                  } catch (InvocationTargetException e) {
                    throw e.getCause();
                  }
              }
            });
  }

  /** These records. */
  public static Shelf shelf(List<PatientRecord> records) {
    return new Shelf() {
      @Override
      public List<CaseloadRow> rows() {
        return records.stream()
            .map(r -> new CaseloadRow(r.patient(), r.evaluations().size(), Optional.empty(), 0))
            .toList();
      }

      @Override
      public Optional<PatientRecord> record(PatientId id) {
        return records.stream().filter(r -> r.patient().id().equals(id)).findFirst();
      }
    };
  }
}
