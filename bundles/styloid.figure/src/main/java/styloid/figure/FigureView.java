package styloid.figure;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import javafx.css.CssMetaData;
import javafx.css.Styleable;
import javafx.css.StyleableProperty;
import javafx.css.StyleablePropertyFactory;
import javafx.geometry.VPos;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;

/**
 * Shows a sketch at any size. Never takes the focus or the mouse. Colours come from CSS: {@code
 * -figure-paper}, {@code -figure-ink} and so on, each with a default.
 */
public final class FigureView extends Region {
  /** Height to width the view asks for. */
  private static final double SHAPE = 0.58;

  private static final StyleablePropertyFactory<FigureView> FACTORY =
      new StyleablePropertyFactory<>(Region.getClassCssMetaData());

  private final Canvas canvas = new Canvas();
  private final Locale locale;
  private final StyleableProperty<Color> paper = colour("paper", v -> v.paper, "#ffffff");
  private final StyleableProperty<Color> ink = colour("ink", v -> v.ink, "#1d2128");
  private final StyleableProperty<Color> skin = colour("skin", v -> v.skin, "#ead9cb");
  private final StyleableProperty<Color> skinLine = colour("skin-line", v -> v.skinLine, "#6b5a4e");
  private final StyleableProperty<Color> body = colour("body", v -> v.body, "#eceef0");
  private final StyleableProperty<Color> bodyLine = colour("body-line", v -> v.bodyLine, "#b6bcc4");
  private final StyleableProperty<Color> table = colour("table", v -> v.table, "#dfe6e4");
  private final StyleableProperty<Color> arc = colour("arc", v -> v.arc, "#1f6f78");
  private Sketch sketch;

  /**
   * @param locale for the numbers beside arcs
   */
  public FigureView(Locale locale) {
    this.locale = locale;
    getStyleClass().add("figure");
    setMouseTransparent(true);
    setFocusTraversable(false);
    getChildren().add(canvas);
  }

  private StyleableProperty<Color> colour(
      String name, Function<FigureView, StyleableProperty<Color>> get, String fallback) {
    return FACTORY.createStyleableColorProperty(
        this, name, "-figure-" + name, get, Color.web(fallback));
  }

  public void show(Sketch shown) {
    sketch = shown;
    draw();
  }

  @Override
  public List<CssMetaData<? extends Styleable, ?>> getCssMetaData() {
    return FACTORY.getCssMetaData();
  }

  @Override
  protected double computePrefHeight(double width) {
    return width < 0 ? 150 : Math.ceil(width * SHAPE);
  }

  @Override
  protected double computePrefWidth(double height) {
    return 260;
  }

  @Override
  protected void layoutChildren() {
    canvas.setWidth(getWidth());
    canvas.setHeight(getHeight());
    draw();
  }

  private Palette palette() {
    return new Palette(
        paper.getValue(),
        ink.getValue(),
        skin.getValue(),
        skinLine.getValue(),
        body.getValue(),
        bodyLine.getValue(),
        table.getValue(),
        arc.getValue());
  }

  private void draw() {
    GraphicsContext graphics = canvas.getGraphicsContext2D();
    graphics.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
    if (sketch == null || canvas.getWidth() < 2 || canvas.getHeight() < 2) {
      return;
    }
    Box frame = sketch.frame();
    double scale = Math.min(canvas.getWidth() / frame.width(), canvas.getHeight() / frame.height());
    double left = canvas.getWidth() / 2 - scale * (frame.left() + frame.right()) / 2;
    double top = canvas.getHeight() / 2 + scale * (frame.bottom() + frame.top()) / 2;
    Painter painter = new Painter(graphics, palette(), scale, left, top);
    painter.paint(sketch.inks());
    sketch.notes().forEach(note -> write(graphics, painter, note, sketch.unit() * scale));
  }

  private void write(GraphicsContext graphics, Painter painter, Sketch.Note note, double unit) {
    String number = String.format(locale, "%.0f°", note.degrees());
    String words = note.meaning() == Sketch.Meaning.MISSING ? "−" + number : number;
    graphics.setFont(Font.font(null, FontWeight.BOLD, Math.max(11, unit * 1.25)));
    graphics.setTextAlign(TextAlignment.CENTER);
    graphics.setTextBaseline(VPos.CENTER);
    graphics.setLineDashes();
    graphics.setStroke(paper.getValue());
    graphics.setLineWidth(4);
    graphics.strokeText(words, painter.x(note.at()), painter.y(note.at()));
    graphics.setFill(ink.getValue());
    graphics.fillText(words, painter.x(note.at()), painter.y(note.at()));
  }
}
