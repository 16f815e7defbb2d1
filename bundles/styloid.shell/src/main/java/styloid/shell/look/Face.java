package styloid.shell.look;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import javafx.scene.Scene;
import javafx.scene.text.Font;

/** Puts style sheets and font on a scene. */
public final class Face {
  private static final List<String> FONTS =
      List.of("Noto Sans", "Segoe UI", "Liberation Sans", "DejaVu Sans");

  private static final double TEXT = 14;
  private static final double ROW = 32;

  private Face() {}

  /** Dresses a scene as its user wants to see it. */
  public static void dress(Scene scene, Display display) {
    ArrayList<String> sheets = new ArrayList<>(display.palette().sheets());
    sheets.add(sheet("/styloid/shell/shell.css"));
    if (display.density() != Display.Density.ORDINARY) {
      sheets.add(sheet("/styloid/shell/" + display.density().code() + ".css"));
    }
    sheets.add(popups(display));
    scene.getStylesheets().setAll(sheets);
    List<String> there = Font.getFamilies();
    FONTS.stream()
        .filter(there::contains)
        .findFirst()
        .ifPresent(f -> scene.getRoot().setStyle("-fx-font-family: \"" + f + "\";"));
  }

  private static String sheet(String name) {
    return Face.class.getResource(name).toExternalForm();
  }

  /** Lists that open and tips are windows of their own, which no transform of the scene reaches. */
  private static String popups(Display display) {
    double factor = display.scale() / 100.0;
    String css =
        String.format(
            Locale.ROOT,
            ".combo-box-popup .list-cell { -fx-font-size: %.0fpx; -fx-min-height: %.0fpx; }"
                + " .tooltip { -fx-font-size: %.0fpx; }",
            TEXT * factor,
            ROW * factor * (display.density() == Display.Density.TOUCH ? 44 / ROW : 1),
            TEXT * factor);
    return "data:text/css;base64,"
        + Base64.getEncoder().encodeToString(css.getBytes(StandardCharsets.UTF_8));
  }
}
