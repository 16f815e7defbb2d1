package styloid.shell;

import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.TextArea;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import styloid.shell.frame.Make;
import styloid.shell.frame.Shell;
import styloid.spi.Texts;

/** What is wrong and what to do, instead of a blank window. */
final class StartReport extends VBox {
  StartReport(String title, String advice, List<String> lines, Texts texts, Runnable again) {
    super(14);
    getStyleClass().add("start-report");
    TextArea details = new TextArea(String.join("\n", lines));
    details.setEditable(false);
    details.setWrapText(true);
    details.setPrefRowCount(Math.min(14, Math.max(4, lines.size() + 2)));
    details.setAccessibleText(Shell.say(texts, "report.details"));
    Button copy =
        Make.button(
            Shell.say(texts, "report.copy"),
            () -> copy(title + "\n" + advice + "\n" + details.getText()));
    Button retry = Make.button(Shell.say(texts, "report.again"), again, "primary");
    getChildren()
        .addAll(Make.text(title, "title"), Make.text(advice), details, new HBox(10, retry, copy));
    setMaxSize(820, USE_PREF_SIZE);
    sceneProperty()
        .addListener((o, was, is) -> javafx.application.Platform.runLater(retry::requestFocus));
  }

  private static void copy(String text) {
    ClipboardContent content = new ClipboardContent();
    content.putString(text);
    Clipboard.getSystemClipboard().setContent(content);
  }
}
