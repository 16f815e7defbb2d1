package styloid.shell.look;

import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;

/** A screen and the one card that may stand over it; what has no room in it is scrolled to. */
public final class Covers extends StackPane {
  private final Node screen;
  private Node focusBefore;

  public Covers(Node screen) {
    super(screen);
    this.screen = screen;
    getStyleClass().add("shell");
  }

  public boolean isCovered() {
    return getChildren().size() > 1;
  }

  /** Puts a card over the screen, in place of one that stands there; the focus goes to it. */
  public void cover(Node card) {
    if (!isCovered()) {
      focusBefore = getScene() == null ? null : getScene().getFocusOwner();
    }
    screen.setDisable(true);
    if (card instanceof Region region && region.getMinHeight() == USE_COMPUTED_SIZE) {
      region.setMinHeight(USE_PREF_SIZE);
    }
    StackPane around = new StackPane(card);
    around.getStyleClass().add("around");
    ScrollPane shade = new ScrollPane(around);
    shade.setFitToWidth(true);
    shade.setFitToHeight(true);
    shade.setFocusTraversable(false);
    shade.getStyleClass().add("shade");
    getChildren().setAll(screen, shade);
    Platform.runLater(card::requestFocus);
  }

  /** Takes the card away and gives the focus back. */
  public void uncover() {
    if (isCovered()) {
      getChildren().setAll(screen);
      screen.setDisable(false);
      if (focusBefore != null) {
        focusBefore.requestFocus();
      }
    }
  }
}
