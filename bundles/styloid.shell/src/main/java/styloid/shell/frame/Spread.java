package styloid.shell.frame;

import javafx.geometry.Orientation;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;

/** Words at the left and buttons at the right; below the words where the width is too little. */
public final class Spread extends Region {
  private static final double GAP = 12;
  private static final double UNDER = 6;

  private final Region words;
  private final FlowPane buttons;
  private final double least;

  /**
   * @param least width the words must have for the buttons to stand beside them
   */
  public Spread(double least, Region words, Node... buttons) {
    this.words = words;
    this.least = least;
    this.buttons = new FlowPane(8, 6, buttons);
    this.buttons.setRowValignment(VPos.CENTER);
    getChildren().addAll(words, this.buttons);
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  private double inner(double width) {
    return width - snappedLeftInset() - snappedRightInset();
  }

  /** All buttons in one row. */
  private double row() {
    double width = 0;
    for (Node button : buttons.getChildren()) {
      if (button.isManaged()) {
        width += snapSizeX(button.prefWidth(-1)) + (width > 0 ? buttons.getHgap() : 0);
      }
    }
    return width;
  }

  private double beside(double inner) {
    double left = inner - row() - GAP;
    return left >= least ? left : -1;
  }

  @Override
  protected double computeMinWidth(double height) {
    return 200;
  }

  @Override
  protected double computePrefWidth(double height) {
    return words.prefWidth(-1) + GAP + row();
  }

  @Override
  protected double computePrefHeight(double width) {
    double inner = width < 0 ? least + GAP + row() : inner(width);
    double left = beside(inner);
    double content =
        left >= 0
            ? Math.max(words.prefHeight(left), buttons.prefHeight(row()))
            : words.prefHeight(inner) + UNDER + buttons.prefHeight(inner);
    return content + snappedTopInset() + snappedBottomInset();
  }

  @Override
  protected double computeMinHeight(double width) {
    return computePrefHeight(width);
  }

  @Override
  protected void layoutChildren() {
    double x = snappedLeftInset();
    double y = snappedTopInset();
    double inner = inner(getWidth());
    double height = getHeight() - y - snappedBottomInset();
    double left = beside(inner);
    if (left >= 0) {
      double side = row();
      double wordsHeight = Math.min(height, words.prefHeight(left));
      double buttonsHeight = buttons.prefHeight(side);
      words.resizeRelocate(x, snapPositionY(y + (height - wordsHeight) / 2), left, wordsHeight);
      double top = snapPositionY(y + Math.max(0, (height - buttonsHeight) / 2));
      buttons.resizeRelocate(snapPositionX(x + inner - side), top, side, buttonsHeight);
    } else {
      double wordsHeight = words.prefHeight(inner);
      words.resizeRelocate(x, y, inner, wordsHeight);
      buttons.resizeRelocate(x, y + wordsHeight + UNDER, inner, buttons.prefHeight(inner));
    }
  }
}
