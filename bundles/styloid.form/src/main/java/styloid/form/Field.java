package styloid.form;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import styloid.model.Absence;
import styloid.model.Entry;
import styloid.model.InSpite;
import styloid.model.ItemKey;
import styloid.model.Message;
import styloid.model.PatientContext;
import styloid.model.Precaution;
import styloid.model.Unit;
import styloid.model.Value;
import styloid.spi.MixedUnits;
import styloid.spi.Texts;
import styloid.spi.slip.Doubt;
import styloid.spi.slip.Slips;

/**
 * One value on the screen: its control, the word for how it stands, and its note. A withheld or
 * read-only place shows words instead of the control.
 */
abstract class Field {
  /** What surrounds a field: where its keys and clicks go. */
  interface Home {
    FormState state();

    Texts texts();

    FormPort port();

    /** Moves on after a value was recorded. */
    void moveOn(Field from);

    /** The field has got or lost the focus. */
    void focusChanged(Field field, boolean focused);
  }

  final Stop stop;
  final Home home;
  final Entering entering;
  final HBox box = new HBox(6);
  final Note note;
  private final Label status = new Label();
  private final Label words = new Label();
  final boolean roomy;

  Field(Stop stop, Home home, ChoiceField.Room room) {
    this.stop = stop;
    this.home = home;
    this.roomy = room != ChoiceField.Room.TIGHT;
    this.entering = new Entering(stop.key(), stop.item(), home.port(), home.texts().locale());
    entering.asking(this::doubt);
    this.note = new Note(this);
    box.setAlignment(Pos.CENTER_LEFT);
    box.getStyleClass().add("field");
    status.getStyleClass().add("status-word");
    // Room is kept where it can be, so that nothing moves when the word comes.
    boolean kept = room != ChoiceField.Room.TIGHT && room != ChoiceField.Room.NARROW;
    status.setMinWidth(kept ? 62 : javafx.scene.layout.Region.USE_PREF_SIZE);
    words.getStyleClass().addAll("words", roomy ? "roomy" : "tight");
    words.setFocusTraversable(true);
    words.setOnMouseClicked(e -> words.requestFocus());
    words.focusedProperty().addListener((o, was, is) -> home.focusChanged(this, is));
  }

  private Optional<Message> doubt(Value value) {
    PatientContext context = home.state().context();
    return Entering.both(
        MixedUnits.question(stop.item(), key(), value, context.snapshot().entries()),
        Slips.look(stop.group(), stop.item(), key(), value, context).map(Doubt::question));
  }

  /** Called once the subclass has made its control. */
  final void assemble(Node... parts) {
    Optional.ofNullable(home.state().drafts().get(key())).ifPresent(entering::resume);
    box.getChildren().setAll(parts);
    box.getChildren().add(words);
    if (roomy) {
      box.getChildren().add(status);
    }
    control().focusedProperty().addListener((o, was, is) -> home.focusChanged(this, is));
    control().getProperties().put(Field.class, this);
    words.getProperties().put(Field.class, this);
  }

  ItemKey key() {
    return stop.key();
  }

  /** The node that takes keys. */
  abstract Node control();

  /** Draws value or text under way into the control. */
  abstract void drawControl(Optional<Value> value);

  /** A character typed in a control that is no text field. */
  void typed(String character) {
    // text fields take their characters themselves
  }

  /** The next unit the item allows, where it allows several. */
  void nextUnit() {
    // only numbers have one
  }

  /** The width there is for a list of answers. */
  void atMost(double width) {
    // other kinds keep their width
  }

  /** The unit stands once for the whole row. */
  void unitElsewhere() {
    // only numbers have one
  }

  boolean takesWords() {
    return false;
  }

  /** The unit a bare number is taken in; whatever the kind, one must be named. */
  Unit unit() {
    return Unit.NUMBER;
  }

  /** Whether a precaution keeps it closed: one that forbids it, and no reason to override. */
  boolean withheld() {
    boolean open = entering.reason().isPresent() && home.port().mayOverride();
    return !open && !precautions().isEmpty();
  }

  /** The reason an entry here was made with, or the one given for those to come. */
  Optional<String> overridden() {
    return entering
        .reason()
        .or(
            () ->
                home.state()
                    .context()
                    .snapshot()
                    .entry(key())
                    .flatMap(Entry::override)
                    .map(InSpite::reason));
  }

  /** Asks why it is done although it is withheld; only who is licensed is asked that. */
  final void askWhy() {
    if (home.state().readOnly() || !withheld()) {
      return;
    } else if (home.port().mayOverride()) {
      note.askWhy();
    } else {
      home.port().askWhoWorks();
    }
  }

  /** Opens the place to entry under a reason. */
  final void open(String reason) {
    entering.inSpite(reason);
    draw();
    control().requestFocus();
  }

  List<Precaution> precautions() {
    return home.state().withheldBy(stop.group(), stop.item(), key());
  }

  private boolean closed() {
    return home.state().readOnly() || withheld();
  }

  Node focusTarget() {
    return closed() ? words : control();
  }

  boolean focused() {
    return focusTarget().isFocused();
  }

  FieldStatus fieldStatus() {
    return entering.dirty()
        ? FieldStatus.UNFINISHED
        : home.state().status(stop.group(), stop.item(), key());
  }

  final void draw() {
    FieldStatus now = fieldStatus();
    Optional<Value> value = home.state().value(key());
    boolean closed = closed();
    box.getChildren()
        .forEach(
            part -> {
              boolean shown = part == status || closed == (part == words);
              part.setVisible(shown);
              part.setManaged(shown);
            });
    words.setText(value.map(v -> home.texts().value(key(), v)).orElse(word(now)));
    drawControl(value);
    boolean quiet = now == FieldStatus.EMPTY || now == FieldStatus.WITHHELD || closed;
    status.setText(quiet ? "" : word(now));
    for (FieldStatus any : FieldStatus.values()) {
      mark(any.code(), any == now);
    }
    mark("asking", entering.mode() == Entering.Mode.QUESTION);
    mark("refused", entering.mode() == Entering.Mode.REFUSED);
    mark("absent", value.orElse(null) instanceof Absence);
    String name = accessibleName(value, now);
    control().setAccessibleText(name);
    words.setAccessibleText(name);
    note.draw();
  }

  private void mark(String style, boolean on) {
    box.getStyleClass().remove("is-" + style);
    if (on) {
      box.getStyleClass().add("is-" + style);
    }
  }

  String word(FieldStatus which) {
    return which == FieldStatus.EMPTY
        ? ""
        : home.texts().label(FormView.SCOPE, "status." + which.code());
  }

  /** "Right, Elbow flexion, trial 2 of 3": the side first, so that it is never cut off. */
  String name() {
    Texts texts = home.texts();
    String place = texts.place(key().side(), key().digit());
    StringBuilder name = new StringBuilder(place.isEmpty() ? "" : place + ", ");
    String item = texts.item(key());
    String group = texts.label(key().test().value(), "group." + stop.group().id());
    // "Range" says too little without its motion; "Elbow flexion" says it all under "Elbow".
    boolean said = item.contains(group.split("[ ,]")[0]);
    name.append(said ? item : group + ": " + item);
    if (stop.item().trials() > 1) {
      name.append(", ").append(say("trial", key().trial(), stop.item().trials()));
    }
    return name.toString();
  }

  String say(String messageKey, Object... args) {
    return home.texts().text(Message.of(FormView.SCOPE, messageKey, args));
  }

  private String accessibleName(Optional<Value> value, FieldStatus now) {
    String shown = value.map(v -> ": " + home.texts().value(key(), v)).orElse("");
    String state = word(now);
    return name() + shown + (state.isEmpty() ? "" : ", " + state);
  }

  /** Does something to the entering and follows where it leads. */
  final void act(java.util.function.Function<Entering, Entering.Then> what) {
    Entering.Then then = what.apply(entering);
    draw();
    if (then == Entering.Then.NEXT) {
      home.moveOn(this);
    }
  }

  /** Enter or Tab: commits, and tells whether entry may go on. */
  final Entering.Then enter() {
    Entering.Then then = entering.enter(unit());
    draw();
    return then;
  }

  final void change(Consumer<Entering> what) {
    what.accept(entering);
    draw();
  }

  /** The absence key: asks for the reason; where withheld, the reason is known. */
  final void noValue() {
    if (home.state().readOnly()) {
      return;
    } else if (withheld()) {
      act(e -> e.absent(Absence.Reason.PRECAUTION));
    } else {
      change(Entering::absence);
    }
  }
}
