package styloid.shell.frame;

import java.util.Locale;
import java.util.prefs.BackingStoreException;
import java.util.prefs.Preferences;
import javafx.scene.control.ChoiceBox;
import javafx.util.StringConverter;
import styloid.spi.Paper;
import styloid.spi.Texts;

/** The paper workbooks are printed on: A4 or US letter, as chosen last on this machine. */
public final class PaperChoice extends ChoiceBox<Paper> {
  private static final String KEY = "paper";
  private final Preferences node;

  public PaperChoice(Texts texts) {
    this(texts, Preferences.userRoot().node("styloid/print"));
  }

  PaperChoice(Texts texts, Preferences node) {
    this.node = node;
    getItems().setAll(Paper.values());
    setConverter(
        new StringConverter<>() {
          @Override
          public String toString(Paper paper) {
            return paper == null ? "" : Shell.say(texts, "paper." + paper.code());
          }

          @Override
          public Paper fromString(String text) {
            throw new UnsupportedOperationException("only chosen from the list");
          }
        });
    setAccessibleText(Shell.say(texts, "paper"));
    setValue(remembered(texts.locale()));
    valueProperty().addListener((o, was, is) -> remember(is));
  }

  private Paper remembered(Locale locale) {
    String code = node.get(KEY, "");
    for (Paper paper : Paper.values()) {
      if (paper.code().equals(code)) {
        return paper;
      }
    }
    return Paper.of(locale);
  }

  private void remember(Paper paper) {
    node.put(KEY, paper.code());
    try {
      node.flush();
    } catch (BackingStoreException e) {
      System.getLogger(PaperChoice.class.getName())
          .log(System.Logger.Level.WARNING, "the paper is not remembered", e);
    }
  }
}
