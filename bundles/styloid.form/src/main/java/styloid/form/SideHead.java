package styloid.form;

import java.util.Set;
import javafx.scene.control.Label;
import styloid.model.Digit;
import styloid.model.Side;
import styloid.spi.Texts;

/** The words that say which limb one is at. */
final class SideHead {
  private SideHead() {}

  /** "Left arm, involved". */
  static Label of(Side side, Field.Home home) {
    Set<Side> involved = home.state().context().patient().involved();
    String key =
        "limb." + (involved.isEmpty() ? "" : involved.contains(side) ? "involved." : "other.");
    Label head = new Label(home.texts().label(FormView.SCOPE, key + side.code()));
    head.getStyleClass().addAll("side-head", involved.contains(side) ? "involved" : "not-involved");
    return head;
  }

  /** "Left", to stand beside a value. */
  static Label word(Side side, Field.Home home) {
    Texts texts = home.texts();
    Label word = new Label(texts.place(side, Digit.NONE));
    word.getStyleClass().add("side-word");
    return word;
  }
}
