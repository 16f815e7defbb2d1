package styloid.shell.evaluation;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import styloid.model.Therapist;
import styloid.session.OpenEvaluation;
import styloid.shell.frame.Make;
import styloid.shell.frame.Shell;
import styloid.shell.frame.Spread;
import styloid.shell.frame.WhoCard;
import styloid.spi.Texts;

/** What is on disk and what is not, in words; by whom and when. */
final class StatusBar extends HBox {
  private final Texts texts;
  private final Label saved = Make.word("", "saved-state");
  private final Label fault = Make.text("", "problem");
  private final Button retry;
  private final Label calculating = Make.word("", "quiet");
  private final Button worker;
  private final Label visit = Make.word("", "quiet");

  StatusBar(Texts texts, Runnable retrySaving, Runnable askWho) {
    super(14);
    this.texts = texts;
    retry = Make.button(Shell.say(texts, "status.retry"), retrySaving);
    worker = Make.button("", askWho, "quiet-button", "status-worker");
    worker.setMinWidth(0);
    getStyleClass().add("status-bar");
    setAlignment(Pos.CENTER_LEFT);
    HBox stored = new HBox(14, saved, fault, retry, calculating);
    stored.setAlignment(Pos.CENTER_LEFT);
    Spread parts = new Spread(190, stored, worker, visit);
    HBox.setHgrow(parts, Priority.ALWAYS);
    getChildren().add(parts);
  }

  void show(OpenEvaluation open, Optional<Therapist> works) {
    int waiting = open.unsaved().size();
    boolean failing = open.savingFault().isPresent();
    saved.setText(
        failing
            ? Shell.say(texts, "status.not-saved", waiting)
            : waiting > 0
                ? Shell.say(texts, "status.saving", waiting)
                : Shell.say(texts, "status.saved"));
    fault.setText(open.savingFault().orElse(""));
    Make.shown(fault, failing);
    Make.shown(retry, failing);
    worker.setText(
        works
            .map(who -> Shell.say(texts, "status.worker", WhoCard.words(who, texts)))
            .orElseGet(() -> Shell.say(texts, "status.nobody")));
    calculating.setText(open.calculating() ? Shell.say(texts, "status.calculating") : "");
    var evaluation = open.context().evaluation();
    visit.setText(
        Shell.say(
            texts,
            "status.visit",
            texts.date(evaluation.date()),
            evaluation.therapist().value(),
            texts.word(evaluation.state())));
  }
}
