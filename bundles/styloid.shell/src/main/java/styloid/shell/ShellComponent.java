package styloid.shell;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.stage.Stage;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Deactivate;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import styloid.session.Session;
import styloid.shell.frame.Therapists;
import styloid.shell.frame.TimerLengths;
import styloid.shell.look.Displays;

/**
 * Brings the window up on the stage the launcher offers. All else may be missing or come later:
 * without it the window says what is wrong.
 */
@Component(service = AutoCloseable.class, property = "styloid.role=shell", immediate = true)
public final class ShellComponent implements AutoCloseable {
  @Reference(target = "(styloid.role=window)")
  Stage stage;

  @Reference(target = "(styloid.role=clinic-note)", cardinality = ReferenceCardinality.OPTIONAL)
  String note;

  @Reference(target = "(styloid.role=start-report)", cardinality = ReferenceCardinality.OPTIONAL)
  @SuppressWarnings("rawtypes")
  Supplier report;

  private volatile Session session;
  private volatile ShellWindow window;

  /** The session may come and go while the window stands. */
  @Reference(
      cardinality = ReferenceCardinality.OPTIONAL,
      policy = ReferencePolicy.DYNAMIC,
      policyOption = ReferencePolicyOption.GREEDY)
  void setSession(Session bound) {
    session = bound;
    tell(w -> w.use(bound));
  }

  void unsetSession(Session unbound) {
    if (session == unbound) {
      session = null;
    }
    tell(w -> w.lose(unbound));
  }

  private void tell(Consumer<ShellWindow> what) {
    ShellWindow there = window;
    if (there != null) {
      Platform.runLater(() -> what.accept(there));
    }
  }

  @Activate
  void activate() {
    ShellWindow made =
        new ShellWindow(
            stage,
            Clock.systemDefaultZone(),
            Therapists.ofUser(),
            TimerLengths.ofUser(),
            Displays.ofUser(),
            Optional.ofNullable(note),
            this::startReport);
    window = made;
    Runnable open = () -> made.open(Optional.ofNullable(session));
    if (Platform.isFxApplicationThread()) {
      open.run();
    } else {
      Platform.runLater(open);
    }
  }

  private List<String> startReport() {
    if (report == null) {
      return List.of();
    }
    return ((List<?>) report.get()).stream().map(String::valueOf).toList();
  }

  @Deactivate
  void deactivate() {
    tell(ShellWindow::dispose);
  }

  /** Closes the window once all is stored. */
  @Override
  public void close() {
    tell(ShellWindow::leave);
  }
}
