package styloid.shell.frame;

import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import styloid.model.Therapist;
import styloid.model.TherapistId;
import styloid.spi.Texts;

/**
 * Asks who works from now on. Whoever worked here before is taken with the digit beside them;
 * nobody is taken without being chosen.
 */
public final class WhoCard extends VBox {
  private final Shell shell;
  private final Texts texts;
  private final List<Therapist> known;
  private final TextField id = new TextField();
  private final TextField name = new TextField();
  private final CapacityChoice capacity;
  private final Label problem = Make.text("", "problem");

  /**
   * @param lead why it is asked; blank when the user asked for it
   */
  public WhoCard(Shell shell, Texts texts, String lead) {
    super(12);
    this.shell = shell;
    this.texts = texts;
    this.known = shell.therapists().known();
    this.capacity = new CapacityChoice(texts);
    getStyleClass().add("cover-card");
    setMaxSize(560, USE_PREF_SIZE);
    Label why = Make.text(lead, "quiet");
    Make.shown(why, !lead.isBlank());
    Make.shown(problem, false);
    VBox people = people();
    getChildren()
        .addAll(
            Make.text(say("who.title"), "title"),
            why,
            people,
            labelled("who.id", id),
            labelled("who.name", name),
            capacity,
            problem,
            new HBox(
                10,
                Make.button(say("who.go"), this::go, "primary"),
                Make.button(say("cancel"), shell.screens()::uncover)));
    id.setOnAction(e -> go());
    name.setOnAction(e -> go());
    addEventFilter(KeyEvent.KEY_TYPED, this::digit);
    Node first = known.isEmpty() ? id : people.getChildren().get(1);
    Platform.runLater(first::requestFocus);
  }

  private VBox people() {
    VBox people = new VBox(6, Make.text(say("who.known"), "field-label"));
    for (int place = 0; place < known.size(); place++) {
      Therapist one = known.get(place);
      Button button =
          Make.button(
              say("who.line", place + 1, words(one, texts)), () -> take(one), "quiet-button");
      people.getChildren().add(button);
    }
    Make.shown(people, !known.isEmpty());
    return people;
  }

  /** "A. Therapist, licensed therapist". */
  public static String words(Therapist who, Texts texts) {
    String named =
        who.name().map(n -> Shell.say(texts, "who.named", who.id().value(), n)).orElse("");
    String person = named.isEmpty() ? who.id().value() : named;
    String works =
        who.capacity()
            .map(c -> CapacityChoice.words(c, texts))
            .orElseGet(() -> Shell.say(texts, "capacity.unsaid"));
    return Shell.say(texts, "who.works", person, works);
  }

  private Node labelled(String key, TextField field) {
    Label label = Make.text(say(key), "field-label");
    label.setLabelFor(field);
    field.setAccessibleText(say(key));
    return new VBox(4, label, field);
  }

  private void digit(KeyEvent event) {
    boolean writing = event.getTarget() instanceof TextInputControl;
    String typed = event.getCharacter();
    if (!writing && typed.length() == 1 && typed.charAt(0) >= '1' && typed.charAt(0) <= '9') {
      int place = typed.charAt(0) - '1';
      if (place < known.size()) {
        event.consume();
        take(known.get(place));
      }
    }
  }

  private void go() {
    String signature = id.getText().strip();
    String full = name.getText().strip();
    if (signature.isEmpty() || signature.length() > 200) {
      refuse("begin.no-therapist", id);
    } else if (full.length() > Therapist.LONGEST_NAME) {
      refuse("who.long-name", name);
    } else {
      take(
          new Therapist(
              new TherapistId(signature),
              Optional.of(full).filter(n -> !n.isEmpty()),
              capacity.chosen()));
    }
  }

  private void refuse(String key, TextField field) {
    problem.setText(say(key));
    Make.shown(problem, true);
    field.requestFocus();
  }

  private void take(Therapist who) {
    shell.therapists().used(who);
    shell.session().workAs(who);
    shell.screens().uncover();
  }

  private String say(String key, Object... args) {
    return Shell.say(texts, key, args);
  }
}
