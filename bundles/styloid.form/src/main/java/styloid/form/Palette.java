package styloid.form;

import java.util.List;

/** The colours of the suite, by name in style sheets: {@code -st-ink}, {@code -st-paper} ... */
public enum Palette {
  LIGHT,
  DARK;

  /** The style sheets of form and colours, as URLs, in the order they belong into a scene. */
  public List<String> sheets() {
    String colours = this == DARK ? "palette-dark.css" : "palette-light.css";
    return List.of(
        Palette.class.getResource(colours).toExternalForm(),
        Palette.class.getResource("form.css").toExternalForm());
  }
}
