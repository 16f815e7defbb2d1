package styloid.shell.caseload;

import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import styloid.model.Patient;
import styloid.shell.frame.Make;
import styloid.shell.frame.Shell;
import styloid.spi.Texts;
import styloid.store.CaseloadRow;

/** One patient in the list: name, record number and birth date; visits and drafts. */
final class PatientCell extends ListCell<CaseloadRow> {
  private final Texts texts;
  private final Label name = Make.text("", "cell-name");
  private final Label facts = Make.text("", "cell-facts");
  private final Label visits = Make.word("", "cell-facts");
  private final Label drafts = Make.word("", "cell-drafts");
  private final VBox row;

  PatientCell(Texts texts) {
    this.texts = texts;
    row = new VBox(2, line(name, visits), line(facts, drafts));
    setPrefWidth(0);
  }

  private static HBox line(Label left, Label right) {
    HBox line = new HBox(10, left, Make.gap(), right);
    line.setAlignment(Pos.BASELINE_LEFT);
    return line;
  }

  @Override
  protected void updateItem(CaseloadRow item, boolean empty) {
    super.updateItem(item, empty);
    if (empty || item == null) {
      setGraphic(null);
      setAccessibleText(null);
      return;
    }
    Patient patient = item.patient();
    name.setText(patient.name());
    String born =
        patient
            .birthDate()
            .map(texts::date)
            .map(day -> Shell.say(texts, "banner.born", day))
            .orElse(Shell.say(texts, "banner.birth-unknown"));
    facts.setText(Shell.say(texts, "cell.facts", patient.recordNumber(), born));
    visits.setText(
        item.lastVisit()
            .map(day -> Shell.say(texts, "cell.visits", texts.date(day)))
            .orElse(Shell.say(texts, "cell.no-visit")));
    drafts.setText(
        item.evaluations() == 0
            ? ""
            : Shell.say(texts, "cell.drafts", item.evaluations(), item.drafts()));
    setAccessibleText(
        String.join(", ", patient.name(), facts.getText(), visits.getText(), drafts.getText()));
    setGraphic(row);
  }
}
