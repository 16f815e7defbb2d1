package styloid.shell.evaluation;

import java.io.File;
import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletionException;
import java.util.concurrent.atomic.AtomicBoolean;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.TextField;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import styloid.session.OpenEvaluation;
import styloid.shell.frame.Make;
import styloid.shell.frame.PaperChoice;
import styloid.shell.frame.Shell;
import styloid.spi.Paper;
import styloid.spi.Progress;
import styloid.spi.Texts;

/** Writes the evaluation to a file: where to, how far, and then where it lies. */
final class ExportCard extends VBox {
  private final Shell shell;
  private final Texts texts;
  private final OpenEvaluation open;
  private final String format;
  private final TextField target = new TextField();
  private final ProgressBar bar = new ProgressBar(0);
  private final Label words = Make.text("");
  private final PaperChoice paper;
  private final Button go;
  private final Button stop;
  private final Button browse;
  private final HBox done;
  private final AtomicBoolean cancelled = new AtomicBoolean();

  ExportCard(Shell shell, Texts texts, OpenEvaluation open, String format) {
    super(12);
    this.shell = shell;
    this.texts = texts;
    this.open = open;
    this.format = format;
    getStyleClass().add("cover-card");
    setMaxSize(640, Region.USE_PREF_SIZE);
    paper = new PaperChoice(texts);
    target.setText(suggestion().toString());
    target.setAccessibleText(say("export.target"));
    HBox.setHgrow(target, Priority.ALWAYS);
    browse = Make.button(say("export.browse"), this::browse);
    go = Make.button(say("export.go"), this::export, "primary");
    stop = Make.button(say("cancel"), this::cancel);
    bar.setMaxWidth(Double.MAX_VALUE);
    bar.setAccessibleText(say("export.progress"));
    done =
        new HBox(
            10,
            Make.button(say("export.copy"), () -> copy(target.getText())),
            Make.button(say("export.close"), shell.screens()::uncover, "primary"));
    HBox file = new HBox(8, target, browse);
    HBox print = new HBox(8, Make.word(say("paper"), "field-label"), paper);
    print.setAlignment(Pos.CENTER_LEFT);
    HBox actions = new HBox(10, go, stop);
    file.setAlignment(Pos.CENTER_LEFT);
    Make.shown(bar, false);
    Make.shown(words, false);
    Make.shown(done, false);
    getChildren()
        .addAll(
            Make.text(say("export.title"), "title"),
            Make.text(say("export.target"), "field-label"),
            file,
            print,
            bar,
            words,
            actions,
            done);
    target.setOnAction(e -> export());
    focusedProperty().addListener((o, was, is) -> target.requestFocus());
  }

  private Path suggestion() {
    var context = open.context();
    String record = context.patient().recordNumber().replaceAll("[^A-Za-z0-9-]+", "_");
    String name = record + "-" + context.evaluation().date() + "." + format;
    return Path.of(System.getProperty("user.home"), name);
  }

  private void browse() {
    FileChooser chooser = new FileChooser();
    chooser
        .getExtensionFilters()
        .add(new FileChooser.ExtensionFilter(say("export.kind"), List.of("*." + format)));
    File now = new File(target.getText());
    chooser.setInitialFileName(now.getName());
    if (now.getParentFile() != null && now.getParentFile().isDirectory()) {
      chooser.setInitialDirectory(now.getParentFile());
    }
    File chosen = chooser.showSaveDialog(getScene().getWindow());
    if (chosen != null) {
      target.setText(chosen.toString());
    }
  }

  private void export() {
    Path path;
    try {
      path = Path.of(target.getText().strip());
    } catch (InvalidPathException e) {
      tell(say("export.bad-path", e.getReason()), "problem");
      return;
    }
    if (target.getText().isBlank() || path.getFileName() == null) {
      tell(say("export.no-path"), "problem");
      return;
    }
    Path file =
        path.getFileName().toString().endsWith("." + format)
            ? path
            : path.resolveSibling(path.getFileName() + "." + format);
    target.setText(file.toString());
    Paper chosen = paper.getValue();
    busy(true);
    cancelled.set(false);
    shell
        .work()
        .run(
            () -> {
              shell.session().settle();
              return shell.session().report(open(), texts.locale()).on(chosen);
            },
            report ->
                shell
                    .session()
                    .export(report, format, file, progress())
                    .whenComplete((path2, why) -> Platform.runLater(() -> finished(path2, why))),
            why -> finished(null, why));
  }

  /** The evaluation as it stands now, results included, rather than when the card came up. */
  private OpenEvaluation open() {
    return shell.session().current().orElse(open);
  }

  private Progress progress() {
    return new Progress() {
      @Override
      public void step(int step, int of) {
        Platform.runLater(() -> bar.setProgress(of == 0 ? 0 : (double) step / of));
      }

      @Override
      public boolean cancelled() {
        return cancelled.get();
      }
    };
  }

  private void finished(Path file, Throwable why) {
    busy(false);
    Throwable cause = why instanceof CompletionException ? why.getCause() : why;
    if (cause instanceof CancellationException) {
      tell(say("export.cancelled"), "quiet");
    } else if (cause instanceof IOException) {
      tell(say("export.failed", String.valueOf(cause.getMessage())), "problem");
    } else if (cause != null) {
      tell(say("export.failed", cause.toString()), "problem");
    } else {
      tell(say("export.done", file.toString()), "done");
      Make.shown(go, false);
      Make.shown(stop, false);
      Make.shown(done, true);
      done.getChildren().get(1).requestFocus();
    }
  }

  private void tell(String text, String style) {
    words.getStyleClass().setAll("label", style);
    words.setText(text);
    Make.shown(words, true);
  }

  private void busy(boolean busy) {
    target.setDisable(busy);
    browse.setDisable(busy);
    go.setDisable(busy);
    paper.setDisable(busy);
    Make.shown(bar, busy);
    if (busy) {
      bar.setProgress(ProgressBar.INDETERMINATE_PROGRESS);
      tell(say("export.writing"), "quiet");
    }
  }

  private void cancel() {
    if (go.isDisabled()) {
      cancelled.set(true);
      tell(say("export.cancelling"), "quiet");
    } else {
      shell.screens().uncover();
    }
  }

  private static void copy(String text) {
    ClipboardContent content = new ClipboardContent();
    content.putString(text);
    Clipboard.getSystemClipboard().setContent(content);
  }

  private String say(String key, Object... args) {
    return Shell.say(texts, key, args);
  }
}
