package styloid.shell;

import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.animation.PauseTransition;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ProgressIndicator;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import javafx.util.Duration;
import styloid.session.OpenEvaluation;
import styloid.session.Session;
import styloid.shell.caseload.CaseloadView;
import styloid.shell.evaluation.EvaluationView;
import styloid.shell.frame.Make;
import styloid.shell.frame.Shell;
import styloid.shell.frame.Therapists;
import styloid.shell.frame.TimerLengths;
import styloid.shell.frame.Work;
import styloid.shell.help.DisplayCard;
import styloid.shell.help.GuideStrip;
import styloid.shell.help.KeysHelp;
import styloid.shell.look.Covers;
import styloid.shell.look.Display;
import styloid.shell.look.Displays;
import styloid.shell.look.Face;
import styloid.shell.look.Zoom;
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
  private final Displays displays;
  private final StackPane content = new StackPane();
  private final VBox frame = new VBox(content);
  private final Covers root = new Covers(frame);
  private final Zoom zoom = new Zoom(root);
  private Texts own;
  private Optional<GuideStrip> guide = Optional.empty();
  private Optional<Shell> shell = Optional.empty();
  private Optional<EvaluationView> evaluation = Optional.empty();

  ShellWindow(
      Stage stage,
      Clock clock,
      Therapists therapists,
      TimerLengths lengths,
      Displays displays,
      Optional<String> note,
      Supplier<List<String>> report) {
    this.stage = stage;
    this.clock = clock;
    this.therapists = therapists;
    this.lengths = lengths;
    this.displays = displays;
    this.own = Shell.withOwn(new Texts(Map.of(), locale()));
    this.note = note;
    this.report = report;
  }

  /** Takes the stage over; without a session the start report shows after a moment. */
  void open(Optional<Session> session) {
    frame.getStyleClass().add("content");
    Scene scene = stage.getScene();
    if (scene == null) {
      stage.setScene(new Scene(zoom, 1366, 768));
    } else {
      scene.setRoot(zoom);
    }
    VBox.setVgrow(content, Priority.ALWAYS);
    // It takes what room there is; asking a long page how high it would like to be costs time.
    content.setPrefHeight(0);
    look();
    stage.setTitle(Shell.say(own, "window.title"));
    stage.setMinWidth(640);
    stage.setMinHeight(480);
    stage.setOnCloseRequest(
        e -> {
          e.consume();
          leave();
        });
    zoom.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    zoom.addEventHandler(KeyEvent.KEY_PRESSED, this::unused);
    zoom.addEventHandler(KeyEvent.KEY_TYPED, this::typed);
    if (session.isPresent()) {
      use(session.get());
    } else {
      show(new StackPane(new ProgressIndicator()));
      PauseTransition grace = new PauseTransition(GRACE);
      grace.setOnFinished(e -> reportMissingSession());
      grace.play();
    }
  }

  private void look() {
    Display now = displays.now();
    Face.dress(stage.getScene(), now);
    zoom.scale(now.scale());
  }

  private Locale locale() {
    return displays.now().locale(Locale.getDefault());
  }

  @Override
  public void lookAnew() {
    look();
    if (!own.locale().equals(locale())) {
      own = Shell.withOwn(new Texts(Map.of(), locale()));
      shell.map(Shell::session).ifPresent(this::speakAnew);
    }
  }

  /** The same screen in another language; text under way is kept by the session. */
  private void speakAnew(Session session) {
    boolean open = evaluation.isPresent();
    begin(session);
    if (open) {
      evaluation();
    } else {
      caseload();
    }
    display();
  }

  /** Keys of the window as a whole; they work over cards too, except those that open one. */
  private void pressed(KeyEvent event) {
    Optional<Runnable> action = Optional.empty();
    boolean covered = root.isCovered();
    if (event.getCode() == KeyCode.ESCAPE && covered) {
      action = Optional.of(this::uncover);
    } else if (event.isShortcutDown()) {
      action =
          switch (event.getCode()) {
            case PLUS, ADD, EQUALS -> Optional.of(() -> resize(displays.now().stepped(1)));
            case MINUS, SUBTRACT -> Optional.of(() -> resize(displays.now().stepped(-1)));
            case DIGIT0, NUMPAD0 -> Optional.of(() -> resize(displays.now().withScale(100)));
            case D -> covered ? Optional.empty() : Optional.of(this::display);
            default -> Optional.empty();
          };
    }
    action.ifPresent(
        run -> {
          event.consume();
          run.run();
        });
  }

  private void resize(Display display) {
    displays.set(display);
    look();
  }

  /** Keys nobody on the screen had a use for. */
  private void unused(KeyEvent event) {
    if (event.getCode() == KeyCode.ESCAPE) {
      guide.ifPresent(GuideStrip::skip);
    } else if (event.getCode() == KeyCode.F1) {
      keys();
    }
  }

  private void typed(KeyEvent event) {
    if (event.getCharacter().equals("?") && !(event.getTarget() instanceof TextInputControl)) {
      keys();
    }
  }

  private void keys() {
    if (root.isCovered() || shell.isEmpty()) {
      return;
    }
    if (evaluation.isPresent()) {
      evaluation.get().showKeys();
    } else {
      cover(new KeysHelp(shell.get(), own, Optional.empty(), CaseloadView.KEYS));
    }
  }

  @Override
  public void display() {
    shell.ifPresent(with -> cover(new DisplayCard(with, own)));
  }

  @Override
  public void guide() {
    uncover();
    guide.ifPresent(GuideStrip::begin);
  }

  private void reportMissingSession() {
    if (shell.isEmpty()) {
      report("report.no-session", report.get());
    }
  }

  /** Works through this session from now on. */
  void use(Session session) {
    dropEvaluation();
    begin(session);
    caseload();
    guide.ifPresent(GuideStrip::offerOnce);
  }

  private void begin(Session session) {
    Shell with =
        new Shell(session, work, clock, locale(), therapists, lengths, note, displays, this);
    guide.ifPresent(GuideStrip::skip);
    GuideStrip strip = new GuideStrip(with, own);
    frame.getChildren().setAll(strip, content);
    guide = Optional.of(strip);
    shell = Optional.of(with);
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
    root.cover(card);
  }

  @Override
  public void uncover() {
    root.uncover();
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
}
