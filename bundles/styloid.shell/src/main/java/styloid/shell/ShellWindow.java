package styloid.shell;

import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ProgressIndicator;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import javafx.util.Duration;
import styloid.form.FormView;
import styloid.session.OpenEvaluation;
import styloid.session.Session;
import styloid.shell.caseload.CaseloadView;
import styloid.shell.evaluation.EvaluationView;
import styloid.shell.frame.Make;
import styloid.shell.frame.Shell;
import styloid.shell.frame.Therapists;
import styloid.shell.frame.TimerLengths;
import styloid.shell.frame.Work;
import styloid.spi.Texts;

/** The one window: which screen is in it, and what covers it. Used on the JavaFX thread. */
final class ShellWindow implements Shell.Screens {
  private static final Duration GRACE = Duration.seconds(3);

  private final Stage stage;
  private final Clock clock;
  private final Therapists therapists;
  private final TimerLengths lengths;
  private final Optional<String> note;
  private final Supplier<List<String>> report;
  private final Work work = new Work();
  private final Texts own = Shell.withOwn(new Texts(Map.of(), Locale.getDefault()));
  private final StackPane content = new StackPane();
  private final StackPane root = new StackPane(content);
  private Optional<Shell> shell = Optional.empty();
  private Optional<EvaluationView> evaluation = Optional.empty();
  private Node focusBefore;

  ShellWindow(
      Stage stage,
      Clock clock,
      Therapists therapists,
      TimerLengths lengths,
      Optional<String> note,
      Supplier<List<String>> report) {
    this.stage = stage;
    this.clock = clock;
    this.therapists = therapists;
    this.lengths = lengths;
    this.note = note;
    this.report = report;
  }

  /** Takes the stage over; without a session the start report shows after a moment. */
  void open(Optional<Session> session) {
    content.getStyleClass().add("content");
    root.getStyleClass().add("shell");
    Scene scene = stage.getScene();
    if (scene == null) {
      stage.setScene(new Scene(root, 1366, 768));
    } else {
      scene.setRoot(root);
    }
    Face.dress(stage.getScene());
    stage.setTitle(Shell.say(own, "window.title"));
    stage.setMinWidth(960);
    stage.setMinHeight(600);
    stage.setOnCloseRequest(
        e -> {
          e.consume();
          leave();
        });
    root.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    if (session.isPresent()) {
      use(session.get());
    } else {
      show(new StackPane(new ProgressIndicator()));
      PauseTransition grace = new PauseTransition(GRACE);
      grace.setOnFinished(e -> reportMissingSession());
      grace.play();
    }
  }

  private void pressed(KeyEvent event) {
    if (event.getCode() == KeyCode.ESCAPE && root.getChildren().size() > 1) {
      event.consume();
      uncover();
    }
  }

  private void reportMissingSession() {
    if (shell.isEmpty()) {
      report("report.no-session", report.get());
    }
  }

  /** Works through this session from now on. */
  void use(Session session) {
    dropEvaluation();
    shell =
        Optional.of(
            new Shell(session, work, clock, Locale.getDefault(), therapists, lengths, note, this));
    caseload();
  }

  /** The session went away: what is on the screen can no longer be trusted to save. */
  void lose(Session session) {
    if (shell.isPresent() && shell.get().session() == session) {
      dropEvaluation();
      shell = Optional.empty();
      report("report.no-session", report.get());
    }
  }

  private void dropEvaluation() {
    evaluation.ifPresent(EvaluationView::dispose);
    evaluation = Optional.empty();
  }

  private void report(String key, List<String> lines) {
    uncover();
    String title = Shell.say(own, key + ".title");
    String advice = Shell.say(own, key + ".advice");
    StackPane page = new StackPane(new StartReport(title, advice, lines, own, this::tryAgain));
    show(page);
  }

  private void tryAgain() {
    if (shell.isPresent()) {
      caseload();
    } else {
      reportMissingSession();
    }
  }

  private void show(Node screen) {
    content.getChildren().setAll(screen);
  }

  @Override
  public void caseload() {
    Shell with = shell.orElseThrow();
    uncover();
    if (evaluation.isPresent()) {
      dropEvaluation();
      show(busy("busy.saving"));
      work.run(
          () -> {
            with.session().close();
            return true;
          },
          closed -> showCaseload(with),
          this::stay);
    } else {
      showCaseload(with);
    }
  }

  private void showCaseload(Shell with) {
    CaseloadView view = new CaseloadView(with, report, this::storeFault);
    show(view);
    view.begin();
  }

  /** The store cannot even list patients: nothing else would work either. */
  private void storeFault(Exception why) {
    report("report.store", List.of(String.valueOf(why.getMessage())));
  }

  @Override
  public void evaluation() {
    Shell with = shell.orElseThrow();
    Optional<OpenEvaluation> open = with.session().current();
    if (open.isEmpty()) {
      caseload();
      return;
    }
    Optional<EvaluationView> before = evaluation;
    if (before.isEmpty()) {
      uncover();
    }
    dropEvaluation();
    EvaluationView view = new EvaluationView(with, open.get());
    evaluation = Optional.of(view);
    show(view);
    view.begin(before);
  }

  private Node busy(String key) {
    VBox box = new VBox(14, new ProgressIndicator(), Make.text(Shell.say(own, key)));
    box.setAlignment(javafx.geometry.Pos.CENTER);
    return box;
  }

  @Override
  public void cover(Node card) {
    if (root.getChildren().size() == 1) {
      focusBefore = root.getScene() == null ? null : root.getScene().getFocusOwner();
    }
    content.setDisable(true);
    StackPane shade = new StackPane(card);
    shade.getStyleClass().add("shade");
    root.getChildren().setAll(content, shade);
    Platform.runLater(card::requestFocus);
  }

  @Override
  public void uncover() {
    if (root.getChildren().size() > 1) {
      root.getChildren().setAll(content);
      content.setDisable(false);
      if (focusBefore != null) {
        focusBefore.requestFocus();
      }
    }
  }

  @Override
  public void problem(Exception why) {
    VBox card =
        Make.card(
            520,
            Make.text(Shell.say(own, "problem.title"), "title"),
            Make.text(String.valueOf(why.getMessage())),
            Make.button(Shell.say(own, "problem.close"), this::uncover, "primary"));
    cover(card);
    card.getChildren().get(2).requestFocus();
  }

  /** Waits for the last entries to be stored, off this thread, then closes. */
  void leave() {
    dropEvaluation();
    show(busy("busy.saving"));
    Optional<Shell> open = shell;
    work.run(
        () -> {
          if (open.isPresent()) {
            open.get().session().close();
          }
          return true;
        },
        closed -> stage.hide(),
        this::stay);
  }

  /** What is not stored would be lost by going: back to it, and the choice to go all the same. */
  private void stay(Exception why) {
    if (shell.flatMap(s -> s.session().current()).isEmpty()) {
      storeFault(why);
      return;
    }
    evaluation();
    Button back = Make.button(Shell.say(own, "unsaved.stay"), this::uncover, "primary");
    Button lose = Make.button(Shell.say(own, "unsaved.lose"), stage::hide);
    cover(
        Make.card(
            520,
            Make.text(Shell.say(own, "unsaved.title"), "title"),
            Make.text(String.valueOf(why.getMessage())),
            new HBox(10, back, lose)));
    back.requestFocus();
  }

  void dispose() {
    dropEvaluation();
    work.close();
  }

  /** Style sheets and fonts. */
  private static final class Face {
    private static final List<String> FONTS =
        List.of("Noto Sans", "Segoe UI", "Liberation Sans", "DejaVu Sans");

    static void dress(Scene scene) {
      scene
          .getStylesheets()
          .setAll(FormView.styles(), ShellWindow.class.getResource("shell.css").toExternalForm());
      List<String> there = javafx.scene.text.Font.getFamilies();
      FONTS.stream()
          .filter(there::contains)
          .findFirst()
          .ifPresent(f -> scene.getRoot().setStyle("-fx-font-family: \"" + f + "\";"));
    }
  }
}
