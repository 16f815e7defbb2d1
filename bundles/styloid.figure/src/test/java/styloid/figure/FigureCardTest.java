package styloid.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.Pane;
import javafx.scene.layout.VBox;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import styloid.model.Digit;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.spi.Sweep;
import styloid.spi.Texts;

class FigureCardTest {
  private static final Texts TEXTS = new Texts(Map.of(), Locale.ENGLISH);

  @BeforeAll
  static void toolkit() throws InterruptedException {
    Toolkit.start();
  }

  private static Subject subject(String item, Side side, List<Reading> readings) {
    ItemKey key = new ItemKey(new TestId("any"), new ItemId(item), side, Digit.NONE, 1);
    return Subject.of(Suite.groupWith(item), key, readings);
  }

  private static FigureCard card(Subject subject, boolean reduced) {
    FigureCard card = new FigureCard(TEXTS);
    card.show(subject, reduced);
    return card;
  }

  private static List<String> words(Node node) {
    return node.lookupAll(".label").stream()
        .map(Label.class::cast)
        .map(Label::getText)
        .distinct()
        .toList();
  }

  @Test
  void sideStandsInWordsAndEveryMarkHasItsWord() throws Exception {
    Subject subject = subject("elbow-flexion-mid-range", Side.LEFT, List.of());
    FigureCard card = Toolkit.on(() -> inScene(card(subject, false), ""));
    assertEquals(List.of("Left, sitting", "support", "resist", "palpate"), words(card));
    assertEquals(
        "Left, sitting; support: upper arm, back; resist: forearm, thumb side; palpate: forearm,"
            + " thumb side",
        card.getAccessibleText());
  }

  @Test
  void gravityReducedIsSaid() throws Exception {
    Subject subject = subject("shoulder-flexion-reduced", Side.RIGHT, List.of());
    FigureCard card = Toolkit.on(() -> inScene(card(subject, true), ""));
    assertEquals("Right, lying on the side; gravity reduced", words(card).get(0));
    assertFalse(words(card).contains("resist"));
  }

  @Test
  void measuredArcAndWhatIsMissingAreSaid() throws Exception {
    Sweep flexion =
        Suite.groupWith("elbow-flexion-active")
            .guide()
            .sweep(new ItemId("elbow-flexion-active"))
            .orElseThrow();
    Subject subject =
        subject(
            "elbow-flexion-active",
            Side.RIGHT,
            List.of(new Reading(flexion, 110, OptionalDouble.of(40))));
    FigureCard card = Toolkit.on(() -> inScene(card(subject, false), ""));
    assertTrue(words(card).containsAll(List.of("measured", "short of the reference")));
    assertTrue(card.getAccessibleText().endsWith("measured 110°; 40° short of the reference"));
  }

  @Test
  void neverTakesTheFocusOrTheMouse() throws Exception {
    Subject subject = subject("elbow-flexion-active", Side.RIGHT, List.of());
    Toolkit.on(
        () -> {
          TextField field = new TextField();
          FigureCard card = new FigureCard(TEXTS);
          Scene scene = new Scene(new VBox(field, card), 300, 300);
          field.requestFocus();
          card.show(subject, false);
          scene.getRoot().applyCss();
          scene.getRoot().layout();
          assertEquals(field, scene.getFocusOwner());
          card.lookupAll("*").forEach(node -> assertFalse(node.isFocusTraversable(), "" + node));
          assertTrue(card.isMouseTransparent());
          return null;
        });
  }

  @Test
  void coloursComeFromTheStyleSheet() throws Exception {
    Subject subject = subject("elbow-flexion-active", Side.RIGHT, List.of());
    String dark = "-figure-skin: #8a6f5a; -figure-ink: white; -figure-paper: #202020;";
    assertTrue(count(picture(subject, ""), Color.web("#ead9cb")) > 500);
    assertEquals(0, count(picture(subject, ""), Color.web("#8a6f5a")));
    assertTrue(count(picture(subject, dark), Color.web("#8a6f5a")) > 500);
    assertEquals(0, count(picture(subject, dark), Color.web("#ead9cb")));
  }

  @Test
  void leftPictureIsTheRightOneTurnedOver() throws Exception {
    WritableImage right = picture(subject("wrist-flexion-range", Side.RIGHT, List.of()), "");
    WritableImage left = picture(subject("wrist-flexion-range", Side.LEFT, List.of()), "");
    int width = (int) right.getWidth();
    int differing = 0;
    for (int x = 0; x < width; x++) {
      for (int y = 0; y < right.getHeight(); y++) {
        Color one = right.getPixelReader().getColor(x, y);
        Color other = left.getPixelReader().getColor(width - 1 - x, y);
        differing += Math.abs(one.getBrightness() - other.getBrightness()) > 0.4 ? 1 : 0;
      }
    }
    assertTrue(differing < 0.005 * width * right.getHeight(), "pixels that differ: " + differing);
  }

  private static WritableImage picture(Subject subject, String style) throws Exception {
    return Toolkit.on(
        () -> {
          FigureView view = new FigureView(Locale.ENGLISH);
          view.setPrefSize(260, 150);
          view.show(Sketcher.draw(subject));
          return inScene(view, style).snapshot(null, null);
        });
  }

  private static <N extends Node> N inScene(N node, String style) {
    Pane root = new Pane(node);
    node.setStyle(style);
    new Scene(root, 300, 300);
    root.applyCss();
    root.layout();
    return node;
  }

  private static int count(WritableImage image, Color wanted) {
    int found = 0;
    for (int x = 0; x < image.getWidth(); x++) {
      for (int y = 0; y < image.getHeight(); y++) {
        Color colour = image.getPixelReader().getColor(x, y);
        found += colour.equals(wanted) ? 1 : 0;
      }
    }
    return found;
  }
}
