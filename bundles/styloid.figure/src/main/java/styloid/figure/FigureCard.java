package styloid.figure;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import styloid.model.ItemKey;
import styloid.model.Message;
import styloid.model.PatientContext;
import styloid.model.Quantity;
import styloid.model.Side;
import styloid.model.Unit;
import styloid.spi.Group;
import styloid.spi.Labels;
import styloid.spi.Mark;
import styloid.spi.Texts;

/**
 * The picture of the step at hand with its caption, the side in words, and a legend of its marks.
 * Takes neither focus nor mouse. Draws anew only when what it shows has changed.
 */
public final class FigureCard extends VBox {
  private static final String SCOPE = "figure";

  private final Texts texts;
  private final FigureView view;
  private final Label caption = new Label();
  private final FlowPane legend = new FlowPane(10, 1);
  private Subject shown;

  public FigureCard(Texts texts) {
    super(3);
    this.texts = texts.with(SCOPE, Labels.beside(FigureCard.class));
    this.view = new FigureView(texts.locale());
    getStyleClass().add("figure-card");
    caption.getStyleClass().add("figure-caption");
    caption.setWrapText(true);
    legend.getStyleClass().add("figure-legend");
    setFocusTraversable(false);
    setMouseTransparent(true);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    getChildren().addAll(caption, view, legend);
  }

  /** What is drawn at this place; empty where there is no picture or no side. */
  public static Optional<Subject> subject(Group group, ItemKey key, PatientContext context) {
    return group.guide().hasPicture() && key.side() != Side.UNSIDED
        ? Optional.of(Subject.of(group, key, Readings.at(group, key, context)))
        : Optional.empty();
  }

  /** Shows a subject of this item. */
  public void show(Subject subject, boolean reduced) {
    if (subject.equals(shown)) {
      return;
    }
    shown = subject;
    Sketch sketch = Sketcher.draw(subject);
    view.show(sketch);
    caption.setText(caption(subject, reduced));
    legend(sketch);
    setAccessibleText(words(subject, reduced));
  }

  private String caption(Subject subject, boolean reduced) {
    String place = texts.place(subject.side(), subject.digit());
    String body = subject.position().map(p -> texts.word(p.body())).orElse("");
    String words = body.isEmpty() ? place : say("caption", place, body);
    return reduced ? say("caption.reduced", words) : words;
  }

  private void legend(Sketch sketch) {
    legend.getChildren().clear();
    sketch.kinds().stream()
        .sorted()
        .forEach(kind -> legend.getChildren().add(entry(Symbols.of(kind), texts.word(kind))));
    if (has(sketch, Ink.Role.ARC)) {
      legend.getChildren().add(entry(Symbols.measured(), say("legend.measured")));
    }
    if (has(sketch, Ink.Role.MISSING)) {
      legend.getChildren().add(entry(Symbols.missing(), say("legend.missing")));
    }
  }

  private static boolean has(Sketch sketch, Ink.Role role) {
    return sketch.inks().stream().anyMatch(ink -> ink.role() == role);
  }

  private static Label entry(Sketch symbol, String words) {
    FigureView small = new FigureView(Locale.ROOT);
    small.setMinSize(22, 15);
    small.setPrefSize(22, 15);
    small.setMaxSize(22, 15);
    small.show(symbol);
    Label label = new Label(words, small);
    label.getStyleClass().add("figure-legend-entry");
    return label;
  }

  /** The picture in words, for those who cannot see it. */
  private String words(Subject subject, boolean reduced) {
    ArrayList<String> parts = new ArrayList<>(List.of(caption(subject, reduced)));
    for (Mark mark : subject.picture().marks()) {
      if (mark.shownFor(subject.digit())) {
        parts.add(
            say(
                "mark",
                texts.word(mark.kind()),
                texts.word(mark.segment()),
                texts.word(mark.aspect())));
      }
    }
    for (Reading reading : subject.readings()) {
      parts.add(say("reading", degrees(reading.degrees())));
      reading.shortOf().stream()
          .filter(d -> d >= 0.5)
          .forEach(d -> parts.add(say("reading.missing", degrees(d))));
    }
    return parts.stream().filter(Objects::nonNull).collect(Collectors.joining("; "));
  }

  private static Quantity degrees(double degrees) {
    return new Quantity(BigDecimal.valueOf(Math.round(degrees)), Unit.DEGREE);
  }

  private String say(String key, Object... args) {
    return texts.text(Message.of(SCOPE, key, args));
  }
}
