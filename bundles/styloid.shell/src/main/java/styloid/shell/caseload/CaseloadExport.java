package styloid.shell.caseload;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletionException;
import java.util.concurrent.atomic.AtomicBoolean;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.RadioButton;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import styloid.session.Batch;
import styloid.session.Pseudonym;
import styloid.session.Selection;
import styloid.shell.frame.Make;
import styloid.shell.frame.PaperChoice;
import styloid.shell.frame.Shell;
import styloid.spi.Paper;
import styloid.spi.Progress;
import styloid.spi.Texts;

/** Writes the evaluations of the patients found: a workbook each, or one caseload. */
final class CaseloadExport extends VBox {
  private static final int KEY_BYTES = 32;
  private static final List<String> KINDS = List.of("each", "caseload", "coded");

  private final Shell shell;
  private final Texts texts;
  private final String search;
  private final ToggleGroup kinds = new ToggleGroup();
  private final CheckBox signed = new CheckBox();
  private final TextField target = new TextField();
  private final PaperChoice paper;
  private final ProgressBar bar = new ProgressBar(0);
  private final Label words = Make.text("");
  private final Button go;
  private final AtomicBoolean cancelled = new AtomicBoolean();
  private boolean running;

  CaseloadExport(Shell shell, Texts texts, String search) {
    super(12);
    this.shell = shell;
    this.texts = texts;
    this.search = search;
    this.paper = new PaperChoice(texts);
    getStyleClass().add("cover-card");
    setMaxSize(640, Region.USE_PREF_SIZE);
    getChildren().add(Make.text(say("caseload.export.title"), "title"));
    String which = search.isBlank() ? "caseload.export.all" : "caseload.export.found";
    getChildren().add(Make.text(say(which, search), "quiet"));
    for (String kind : KINDS) {
      RadioButton button = new RadioButton(say("caseload.export." + kind));
      button.setToggleGroup(kinds);
      button.setUserData(kind);
      button.setWrapText(true);
      getChildren().add(button);
    }
    kinds.selectedToggleProperty().addListener((o, was, is) -> suggest());
    kinds.selectToggle(kinds.getToggles().get(0));
    signed.setText(say("caseload.export.signed"));
    target.setAccessibleText(say("caseload.export.target"));
    bar.setMaxWidth(Double.MAX_VALUE);
    bar.setAccessibleText(say("export.progress"));
    Make.shown(bar, false);
    Make.shown(words, false);
    go = Make.button(say("export.go"), this::export, "primary");
    HBox print = new HBox(8, Make.word(say("paper"), "field-label"), paper);
    print.setAlignment(Pos.CENTER_LEFT);
    getChildren()
        .addAll(
            signed,
            Make.text(say("caseload.export.target"), "field-label"),
            target,
            print,
            bar,
            words,
            new HBox(10, go, Make.button(say("cancel"), this::cancel)));
    focusedProperty().addListener((o, was, is) -> target.requestFocus());
  }

  private String kind() {
    return (String) kinds.getSelectedToggle().getUserData();
  }

  private void suggest() {
    String name = kind().equals("each") ? "workbooks" : "caseload.xlsx";
    target.setText(Path.of(System.getProperty("user.home"), name).toString());
  }

  private void export() {
    Path path;
    try {
      path = Path.of(target.getText().strip());
    } catch (InvalidPathException e) {
      tell(say("export.bad-path", e.getReason()), "problem");
      return;
    }
    if (target.getText().isBlank()) {
      tell(say("export.no-path"), "problem");
      return;
    }
    Selection selection =
        new Selection(search, Optional.empty(), Optional.empty(), "", signed.isSelected());
    Paper chosen = paper.getValue();
    String kind = kind();
    cancelled.set(false);
    busy(true);
    // A thread of its own: it may take minutes, and other work of the window shall not wait.
    Thread worker = new Thread(() -> run(selection, chosen, kind, path), "styloid-caseload-export");
    worker.setDaemon(true);
    worker.start();
  }

  private void run(Selection selection, Paper chosen, String kind, Path path) {
    try {
      Batch batch = new Batch(shell.session(), selection, texts.locale(), chosen);
      Batch.Outcome outcome =
          switch (kind) {
            case "each" -> batch.files(path, progress());
            case "caseload" -> batch.caseload(path, Optional.empty(), progress());
            default -> batch.caseload(path, Optional.of(new Pseudonym(freshKey())), progress());
          };
      Platform.runLater(() -> finished(outcome, path));
    } catch (Exception e) {
      Platform.runLater(() -> failed(e));
    }
  }

  /** Not kept: nobody can tell afterwards which code was whose, nor link two such files. */
  private static byte[] freshKey() {
    byte[] key = new byte[KEY_BYTES];
    new SecureRandom().nextBytes(key);
    return key;
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

  private void finished(Batch.Outcome outcome, Path path) {
    busy(false);
    String done = say("caseload.export.done", outcome.written(), outcome.kept(), path.toString());
    if (outcome.cancelled()) {
      tell(say("caseload.export.stopped", outcome.written()), "quiet");
    } else if (outcome.failed().isEmpty()) {
      tell(done, "done");
    } else {
      tell(done + "\n" + String.join("\n", outcome.failed()), "problem");
    }
  }

  private void failed(Exception e) {
    busy(false);
    Throwable cause = e instanceof CompletionException ? e.getCause() : e;
    if (cause instanceof CancellationException) {
      tell(say("export.cancelled"), "quiet");
    } else {
      tell(say("export.failed", String.valueOf(cause.getMessage())), "problem");
    }
  }

  private void tell(String text, String style) {
    words.getStyleClass().setAll("label", style);
    words.setText(text);
    Make.shown(words, true);
  }

  private void busy(boolean busy) {
    running = busy;
    go.setDisable(busy);
    target.setDisable(busy);
    paper.setDisable(busy);
    signed.setDisable(busy);
    kinds.getToggles().forEach(toggle -> ((RadioButton) toggle).setDisable(busy));
    Make.shown(bar, busy);
    if (busy) {
      bar.setProgress(ProgressBar.INDETERMINATE_PROGRESS);
      tell(say("export.writing"), "quiet");
    }
  }

  private void cancel() {
    if (running) {
      cancelled.set(true);
      tell(say("export.cancelling"), "quiet");
    } else {
      shell.screens().uncover();
    }
  }

  private String say(String key, Object... args) {
    return Shell.say(texts, key, args);
  }
}
