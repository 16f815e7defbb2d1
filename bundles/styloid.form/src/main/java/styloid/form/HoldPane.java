package styloid.form;

import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import styloid.model.Message;
import styloid.spi.Texts;

/** The sweep of a hold, large enough to be read from where the patient sits. */
final class HoldPane extends HBox {
  private final Texts texts;
  private final Label count = new Label();
  private final Label words = new Label();
  private final Region track = new Region();
  private final Region done = new Region();
  private final StackPane sweep = new StackPane(track, done);
  private double share;

  HoldPane(Texts texts) {
    super(18);
    this.texts = texts;
    getStyleClass().add("hold");
    setAlignment(Pos.CENTER_LEFT);
    count.getStyleClass().add("hold-count");
    count.setMinWidth(Region.USE_PREF_SIZE);
    words.getStyleClass().add("hold-words");
    words.setWrapText(true);
    track.getStyleClass().add("hold-track");
    done.getStyleClass().add("hold-done");
    done.setMaxWidth(0);
    StackPane.setAlignment(done, Pos.CENTER_LEFT);
    sweep.widthProperty().addListener((o, was, is) -> done.setMaxWidth(is.doubleValue() * share));
    VBox right = new VBox(8, words, sweep);
    right.setAlignment(Pos.CENTER_LEFT);
    HBox.setHgrow(right, Priority.ALWAYS);
    getChildren().addAll(count, right);
    hide();
  }

  void hide() {
    setVisible(false);
    setManaged(false);
  }

  /** Draws a hold with this share done and so many seconds left. */
  void show(String place, double newShare, long left) {
    share = newShare;
    boolean over = share >= 1;
    count.setText(over ? "\u2713" : Long.toString(left));
    words.setText(
        texts.text(Message.of(FormView.SCOPE, over ? "hold.over" : "hold.running", place)));
    done.setMaxWidth(sweep.getWidth() * share);
    getStyleClass().remove("is-over");
    if (over) {
      getStyleClass().add("is-over");
    }
    setVisible(true);
    setManaged(true);
  }
}
