package styloid.shell.evaluation;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import styloid.form.FormPort;
import styloid.form.FormView;
import styloid.form.Pedals;
import styloid.model.ItemKey;
import styloid.model.Therapist;
import styloid.model.Value;
import styloid.session.OpenEvaluation;
import styloid.session.Session;
import styloid.shell.frame.Banner;
import styloid.shell.frame.Make;
import styloid.shell.frame.Shell;
import styloid.shell.frame.Spread;
import styloid.shell.frame.WhoCard;
import styloid.shell.help.KeysHelp;
import styloid.shell.map.LimbGuide;
import styloid.shell.order.OrderGuide;
import styloid.shell.progress.ProgressCard;
import styloid.spi.Texts;
import styloid.spi.Timer;

/** The open evaluation on the screen. */
public final class EvaluationView extends BorderPane {
  private static final System.Logger LOG = System.getLogger(EvaluationView.class.getName());
  private static final List<String> KEYS =
      List.of(
          "next-page",
          "map",
          "progress",
          "panes",
          "order",
          "rest",
          "export",
          "who",
          "close-evaluation");

  private final Shell shell;
  private final Session session;
  private final Texts texts;
  private final Banner banner = new Banner();
  private final Navigation navigation;
  private final FormView form;
  private final Rail rail;
  private final OrderGuide order;
  private final LimbGuide limbs;
  private final StatusBar status;
  private final FaultStrip faults;
  private final Label title = Make.text("", "page-title");
  private final Label missing = Make.text("", "fault-card");
  private final RestOffer rest;
  private final Folding folding;
  private final Button settings;
  private final Button undo;
  private final Button redo;
  private final AtomicBoolean told = new AtomicBoolean();
  private AutoCloseable listening = () -> {};
  private Stand stand;
  private Page page;

  public EvaluationView(Shell shell, OpenEvaluation open) {
    this.shell = shell;
    this.session = shell.session();
    this.texts = shell.texts();
    this.stand = Stand.of(open);
    this.form = new FormView(new Port(), texts);
    this.limbs = new LimbGuide(shell.screens(), texts, open, this::goTo);
    this.navigation = new Navigation(texts, limbs.node(), p -> go(p, true), form::focusStart);
    this.rail = new Rail(texts);
    this.order = new OrderGuide(shell.screens(), texts, () -> stand.open(), this::goTo);
    this.status = new StatusBar(texts, session::retrySaving, () -> askWho(""));
    this.faults = new FaultStrip(texts, session);
    this.rest = new RestOffer(shell, texts, this::restRecorded);
    this.settings = Make.button(say("settings.open"), this::showSettings);
    this.undo = Make.button(say("evaluation.undo"), this::undo);
    this.redo = Make.button(say("evaluation.redo"), this::redo);
    getStyleClass().add("evaluation");
    setTop(new VBox(head(), faults));
    this.folding = new Folding(this, navigation, rail, say("nav.show"));
    folding.around(middle());
    setBottom(status);
    navigation.setPrefWidth(320);
    rail.setPrefWidth(294);
    form.current().addListener((o, was, is) -> attend(is));
    addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
  }

  private Spread head() {
    Spread head =
        new Spread(
            420,
            banner,
            undo,
            redo,
            Make.button(say("evaluation.export"), this::export, "primary"),
            Make.button(say("evaluation.close"), shell.screens()::caseload));
    head.getStyleClass().add("evaluation-head");
    return head;
  }

  private VBox middle() {
    Spread head = new Spread(170, title, folding.button(), rest.button(), order.button(), settings);
    head.getStyleClass().add("page-head");
    Make.shown(missing, false);
    VBox.setVgrow(form, Priority.ALWAYS);
    form.setPrefHeight(0);
    VBox middle = new VBox(6, head, missing, form);
    middle.getStyleClass().add("middle");
    return middle;
  }

  /**
   * Listens to the session and shows the first page that is not done.
   *
   * @param before the view this one takes the place of; its page and field are kept
   */
  public void begin(Optional<EvaluationView> before) {
    listening = session.listen(change -> tell());
    // What changed while the screen was made was told to nobody.
    session.current().ifPresent(now -> stand = stand.next(now));
    if (stand.pages().isEmpty()) {
      title.setText(say("evaluation.no-tests"));
      draw();
    } else {
      Optional<ItemKey> field = before.map(view -> view.form.current().get());
      go(stand.placeOf(before.map(view -> view.page)), field.isEmpty());
      field.ifPresent(key -> Platform.runLater(() -> goTo(key)));
    }
  }

  /** Any thread: the screen follows once, however often it was told. */
  private void tell() {
    if (told.compareAndSet(false, true)) {
      Platform.runLater(
          () -> {
            told.set(false);
            session.current().ifPresent(this::refresh);
          });
    }
  }

  /** No longer on the screen. */
  public void dispose() {
    try {
      listening.close();
    } catch (Exception e) {
      LOG.log(System.Logger.Level.WARNING, "the session still tells a closed screen", e);
    }
  }

  private void refresh(OpenEvaluation open) {
    if (!open.tests().equals(stand.open().tests())) {
      // Words, pages and fields of a test that came, changed or went are made anew.
      shell.screens().evaluation();
      return;
    }
    stand = stand.next(open);
    draw();
  }

  /** Entry is at another place; nowhere while a page is made, which is no other step. */
  private void attend(ItemKey key) {
    rail.show(stand, page, key);
    limbs.at(Optional.ofNullable(key));
    if (key != null) {
      session.workOn(Optional.of(key));
    }
  }

  private void draw() {
    OpenEvaluation open = stand.open();
    banner.show(
        open.context().patient(),
        open.context().precautions(),
        open.context().evaluation().date(),
        texts);
    status.show(open, session.worker());
    faults.show(
        Stream.concat(open.faults().stream(), session.faults().stream()).distinct().toList());
    order.update();
    limbs.update(open);
    undo.setDisable(!open.canUndo());
    redo.setDisable(!open.canRedo());
    if (page == null) {
      return;
    }
    String test = texts.label(page.test().id().value(), "test.title");
    title.setText(page.region().map(r -> say("page.title", test, texts.word(r))).orElse(test));
    boolean gone = open.withoutModule().contains(page.test().id());
    missing.setText(gone ? say("page.no-module") : "");
    Make.shown(missing, gone);
    form.show(stand.form(page.test()), page.groups());
    navigation.show(stand, page);
    rail.show(stand, page, form.current().get());
    Make.shown(settings, SettingsCard.isFor(page.test()) && !stand.readOnly(page.test()));
    rest.show(stand, page);
  }

  private void askWho(String lead) {
    shell.screens().cover(new WhoCard(shell, texts, lead));
  }

  private void showSettings() {
    shell.screens().cover(new SettingsCard(shell, texts, stand, page.test()));
  }

  private void restRecorded() {
    session.current().ifPresent(this::refresh);
    form.focusStart();
  }

  private void go(Page to, boolean focus) {
    page = to;
    draw();
    if (focus) {
      Platform.runLater(form::focusStart);
    }
  }

  private void goTo(ItemKey key) {
    stand
        .pageOf(key)
        .ifPresent(
            p -> {
              if (!p.isPlaceOf(page)) {
                go(p, false);
              }
              form.focusOn(key);
            });
  }

  private void undo() {
    Optional<ItemKey> key = session.undo();
    session.current().ifPresent(this::refresh);
    key.ifPresent(this::goTo);
  }

  private void redo() {
    Optional<ItemKey> key = session.redo();
    session.current().ifPresent(this::refresh);
    key.ifPresent(this::goTo);
  }

  private void export() {
    List<String> formats = session.formats();
    if (formats.isEmpty()) {
      shell.screens().problem(new IllegalStateException(say("export.no-format")));
    } else {
      shell.screens().cover(new ExportCard(shell, texts, stand.open(), formats.get(0)));
    }
  }

  private Map<KeyCode, Runnable> keys() {
    return Map.of(
        KeyCode.F3, () -> ProgressCard.show(shell, stand.open(), form.current().get()),
        KeyCode.F4, limbs::open,
        KeyCode.F6, this::switchPane);
  }

  private Map<KeyCode, Runnable> shortcuts() {
    return Map.of(
        KeyCode.PAGE_DOWN, () -> leavePage(true),
        KeyCode.PAGE_UP, () -> leavePage(false),
        KeyCode.E, this::export,
        KeyCode.I, () -> askWho(""),
        KeyCode.R, rest::ask,
        KeyCode.T, order::show,
        KeyCode.W, shell.screens()::caseload);
  }

  private void pressed(KeyEvent event) {
    Runnable action = (event.isShortcutDown() ? shortcuts() : keys()).get(event.getCode());
    if (action != null) {
      event.consume();
      action.run();
    }
  }

  /** Shows the keys of the place of entry and of the screen. */
  public void showKeys() {
    shell.screens().cover(new KeysHelp(shell, texts, Optional.of(form.keys()), KEYS));
  }

  /** From the form to the tests, to what stands beside, and back. */
  private void switchPane() {
    if (holdsFocus(form)) {
      folding.unfold();
      navigation.focusHere();
    } else if (!rail.focusNext()) {
      form.focusStart();
    } else {
      folding.fold();
    }
  }

  private boolean holdsFocus(Node part) {
    Node up = getScene().getFocusOwner();
    while (up != null && up != part) {
      up = up.getParent();
    }
    return up != null;
  }

  private void leavePage(boolean forward) {
    stand.beside(page, forward).ifPresent(to -> go(to, true));
  }

  private String say(String key, Object... args) {
    return Shell.say(texts, key, args);
  }

  /** What the form asks for goes to the session. */
  private final class Port implements FormPort {
    @Override
    public void record(ItemKey key, Value value, boolean confirmed) {
      refresh(session.record(key, value, confirmed));
    }

    @Override
    public void recordInSpite(ItemKey key, Value value, boolean confirmed, String reason) {
      refresh(session.recordInSpite(key, value, confirmed, reason));
    }

    @Override
    public boolean mayOverride() {
      return session.worker().filter(Therapist::licensed).isPresent();
    }

    @Override
    public void askWhoWorks() {
      askWho(say("who.needed"));
    }

    @Override
    public int seconds(Timer timer) {
      return shell.lengths().seconds(timer);
    }

    @Override
    public void draft(ItemKey key, String text) {
      session.draft(key, text);
      if (text.isBlank()) {
        session.current().ifPresent(EvaluationView.this::refresh);
      }
    }

    @Override
    public void undo() {
      EvaluationView.this.undo();
    }

    @Override
    public void redo() {
      EvaluationView.this.redo();
    }

    @Override
    public boolean leads(ItemKey from, Optional<ItemKey> to) {
      return order.leads(from, to);
    }

    @Override
    public void leavePage(boolean forward) {
      EvaluationView.this.leavePage(forward);
    }

    @Override
    public void showWhy() {
      rail.toggleWhy();
      rail.show(stand, page, form.current().get());
    }

    @Override
    public void showKeys() {
      EvaluationView.this.showKeys();
    }

    @Override
    public Pedals pedals() {
      return shell.displays().now().pedals();
    }
  }
}
