package styloid.form;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import styloid.model.ItemKey;
import styloid.spi.Group;
import styloid.spi.Labels;
import styloid.spi.Texts;
import styloid.spi.Timer;

/**
 * Draws a page of groups of one test and takes their entries by key. Every kind of item, layout and
 * condition is drawn here, so that all tests share one way of entry. Used on the JavaFX thread.
 */
public final class FormView extends BorderPane {
  /** Scope of the form's own words; its labels must be in the texts given. */
  public static final String SCOPE = "form";

  private final FormPort port;
  private final Texts texts;
  private final ReadOnlyObjectWrapper<ItemKey> current = new ReadOnlyObjectWrapper<>();
  private final ScrollPane scroll = new ScrollPane();
  private final EntryBar bar;
  private final Clock clock;
  private final HoldControl holds;
  private final Timeline resting = new Timeline();
  private FormState state;
  private List<Group> groups = List.of();
  private List<Sections.Section> sections = List.of();
  private Fields fields = new Fields(new Home());
  private Route route;
  private boolean drawn;

  public FormView(FormPort port, Texts texts) {
    this(port, texts, Clock.systemUTC(), Tone.ofSpeaker());
  }

  FormView(FormPort port, Texts texts, Clock clock, Tone tone) {
    this.port = port;
    this.texts = texts;
    this.clock = clock;
    HoldPane sweep = new HoldPane(texts);
    this.holds = new HoldControl(clock, tone, port, sweep);
    this.bar = new EntryBar(texts);
    getStyleClass().add("form");
    scroll.setFitToWidth(true);
    scroll.setFocusTraversable(false);
    scroll.getStyleClass().add("form-scroll");
    setCenter(scroll);
    setBottom(new VBox(sweep, bar));
    resting.getKeyFrames().setAll(new KeyFrame(Duration.millis(500), e -> showRest()));
    resting.setCycleCount(Animation.INDEFINITE);
    addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    addEventFilter(KeyEvent.KEY_TYPED, this::typed);
    addEventFilter(KeyEvent.KEY_RELEASED, e -> holds.released());
  }

  /** The form's own words, to be put into the texts under {@link #SCOPE}. */
  public static Labels labels() {
    return Labels.beside(FormView.class);
  }

  /** The keys that do something at the place entry is at. */
  public KeysCard keys() {
    return KeysCard.of(texts, currentField());
  }

  /** The place entry is at; null when it is nowhere in the form. */
  public ReadOnlyObjectProperty<ItemKey> current() {
    return current.getReadOnlyProperty();
  }

  /**
   * Shows these groups as they stand now. The page is built anew only when it is another one; what
   * is under way in a field stays.
   */
  public void show(FormState newState, List<Group> page) {
    boolean same = drawn && sameTest(newState) && groups.equals(page);
    state = newState;
    if (!same) {
      groups = List.copyOf(page);
      build();
    }
    route = Route.through(state, groups);
    redraw();
  }

  private boolean sameTest(FormState other) {
    return state.test().equals(other.test())
        && state.context().evaluation().id().equals(other.context().evaluation().id())
        && state.context().patient().equals(other.context().patient());
  }

  private void build() {
    current.set(null);
    holds.cancel();
    fields = new Fields(new Home());
    sections = Sections.of(groups, fields);
    VBox page = new VBox(10);
    page.getStyleClass().add("form-page");
    sections.forEach(section -> page.getChildren().add(section.node()));
    scroll.setContent(page);
    scroll.setVvalue(0);
    drawn = true;
  }

  private void redraw() {
    sections.forEach(Sections.Section::update);
    fields.all().forEach(Field::draw);
    currentField().ifPresent(this::showBar);
  }

  private void showBar(Field field) {
    bar.show(field);
    showRest();
  }

  /** Runs on by itself while a rest is to be seen. */
  private void showRest() {
    Optional<Integer> left = getScene() == null ? Optional.empty() : restLeft();
    bar.rest(left);
    if (left.isEmpty()) {
      resting.stop();
    } else {
      resting.play();
    }
  }

  private Optional<Integer> restLeft() {
    ItemKey key = current.get();
    return key == null
        ? Optional.empty()
        : state
            .test()
            .timer(Timer.Kind.REST, key.item())
            .flatMap(
                timer ->
                    Rest.left(
                        state.context().snapshot(), key, port.seconds(timer), clock.instant()));
  }

  /** Draws the hold under way, as each pulse of the screen does. */
  void tick() {
    holds.tick();
  }

  private Optional<Field> currentField() {
    return Optional.ofNullable(current.get()).flatMap(fields::field);
  }

  /** Puts entry at a place of the page. */
  public void focusOn(ItemKey key) {
    fields.field(key).ifPresent(this::focus);
  }

  /** Puts entry where it begins: the first place without an entry. */
  public void focusStart() {
    route.start(state).ifPresent(this::focusOn);
  }

  /** Puts entry where it begins in one group. */
  public void focusStart(Group group) {
    route.start(state, group.id()).ifPresent(this::focusOn);
  }

  private void focus(Field field) {
    if (field.focusTarget().getScene() == null) {
      // A page just built comes into the scene with its first layout; focus cannot wait for that.
      applyCss();
      layout();
    }
    field.focusTarget().requestFocus();
    Platform.runLater(() -> reveal(field));
  }

  /** The place and, as far as there is room, the answers that have just unfolded under it. */
  private void reveal(Field field) {
    layout();
    if (field.note.isVisible()) {
      reveal(field.note);
    }
    reveal(field.box);
  }

  private void reveal(Node node) {
    Reveal.in(scroll, node);
  }

  private Optional<Field> fieldAt(Object target) {
    for (Node node = target instanceof Node n ? n : null; node != null; node = node.getParent()) {
      if (node.getProperties().get(Field.class) instanceof Field field) {
        return Optional.of(field);
      }
    }
    return Optional.empty();
  }

  private void pressed(KeyEvent event) {
    Optional<Field> at = fieldAt(event.getTarget());
    boolean control = event.isShortcutDown();
    Optional<Command> command =
        port.pedals()
            .command(event.getCode(), control)
            .or(() -> Command.pressed(event.getCode(), control, event.isShiftDown()));
    if (at.isPresent() && command.isPresent() && !idleBack(command.get(), at.get())) {
      event.consume();
      run(command.get(), at.get());
    }
  }

  private void typed(KeyEvent event) {
    Optional<Field> at = fieldAt(event.getTarget());
    String character = event.getCharacter();
    if (at.isEmpty() || character.isBlank() || character.charAt(0) < ' ' || chord(event)) {
      return;
    }
    Field field = at.get();
    Optional<Command> command =
        Command.typed(character, field.takesWords()).filter(c -> fits(c, field));
    if (command.isEmpty()) {
      holds.cancel();
    }
    if (command.isPresent()) {
      event.consume();
      run(command.get(), field);
    } else if (field.entering.mode() == Entering.Mode.REASON) {
      event.consume();
      int place = Character.digit(character.charAt(0), 10);
      field.act(e -> e.reason(place));
    } else if (!(event.getTarget() instanceof javafx.scene.control.TextInputControl)) {
      event.consume();
      if (!state.readOnly() && !field.withheld()) {
        field.typed(character);
      }
    }
  }

  /** A plus sign and the letter of overriding are keys only where they can do something. */
  private static boolean fits(Command command, Field field) {
    return switch (command) {
      case TIMER -> HoldControl.of(field).isPresent();
      case OVERRIDE -> field.withheld();
      default -> true;
    };
  }

  private static boolean chord(KeyEvent event) {
    return event.isControlDown() || event.isMetaDown() || event.isAltDown();
  }

  private void run(Command command, Field field) {
    switch (command) {
      case ENTER -> next(field, true);
      case NEXT -> next(field, false);
      case PREVIOUS -> go(route.previous(field.key(), state), false);
      case NO_VALUE -> field.noValue();
      case OTHER_SIDE -> route.otherSide(field.key()).ifPresent(this::focusOn);
      case UNIT -> field.nextUnit();
      case TIMER -> time(field);
      case OVERRIDE -> askWhy(field);
      case BACK -> back(field);
      case UNDO -> undo(field);
      case REDO -> port.redo();
      case WHY -> port.showWhy();
      case KEYS -> port.showKeys();
    }
  }

  /** The question unfolds under the place, which may be the last one in sight. */
  private void askWhy(Field field) {
    field.askWhy();
    Platform.runLater(
        () -> {
          layout();
          reveal(field.note);
        });
  }

  private void time(Field field) {
    if (!state.readOnly() && !field.withheld()) {
      holds.toggle(field);
      Platform.runLater(() -> reveal(field.box));
    }
  }

  /** Going back where there is nothing to go back from is left to whoever shows the form. */
  private boolean idleBack(Command command, Field field) {
    return command == Command.BACK && !holds.isOn() && field.entering.idle();
  }

  private void back(Field field) {
    if (!holds.cancel()) {
      field.change(Entering::escape);
    }
  }

  private void next(Field field, boolean skipOptional) {
    if (state.readOnly() || field.withheld()) {
      moveOn(field, skipOptional);
    } else if (field.enter() == Entering.Then.NEXT) {
      moveOn(field, skipOptional);
    }
  }

  /** Text under way is what was done last, so it is what goes first. */
  private void undo(Field field) {
    if (field.entering.dirty()) {
      field.change(Entering::revert);
    } else {
      port.undo();
    }
  }

  private void go(Optional<ItemKey> to, boolean forward) {
    if (to.isPresent()) {
      focusOn(to.get());
    } else {
      port.leavePage(forward);
    }
  }

  private void moveOn(Field from, boolean skipOptional) {
    ItemKey key = from.key();
    Optional<ItemKey> to = skipOptional ? route.onward(key, state) : route.next(key, state);
    if (!(skipOptional && port.leads(key, to))) {
      go(to, true);
    }
  }

  private void focusChanged(Field field, boolean focused) {
    if (focused) {
      current.set(field.key());
      showBar(field);
    } else {
      holds.cancel();
      field.entering.leave(field.unit());
    }
    field.draw();
    if (field.control() instanceof javafx.scene.control.TextField text && focused) {
      Platform.runLater(
          () -> {
            if (text.isFocused() && !field.entering.dirty()) {
              text.selectAll();
            }
          });
    }
  }

  /** What fields see of the form. */
  private final class Home implements Field.Home {
    @Override
    public FormState state() {
      return state;
    }

    @Override
    public Texts texts() {
      return texts;
    }

    @Override
    public FormPort port() {
      return port;
    }

    @Override
    public void moveOn(Field from) {
      FormView.this.moveOn(from, true);
    }

    @Override
    public void focusChanged(Field field, boolean focused) {
      FormView.this.focusChanged(field, focused);
    }
  }
}
