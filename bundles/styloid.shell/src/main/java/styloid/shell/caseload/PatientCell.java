package styloid.shell.caseload;

import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import styloid.model.Patient;
import styloid.shell.Make;
import styloid.shell.Shell;
import styloid.spi.Texts;
import styloid.store.CaseloadRow;

/** One patient in the list: name, record number and birth date; visits and drafts. */
final class PatientCell extends ListCell<CaseloadRow> {
  private final Texts texts;
  private final Label name = Make.word("", "cell-name");
  private final Label facts = Make.word("", "cell-facts");
  private final Label visits = Make.word("", "cell-facts");
  private final Label drafts = Make.word("", "cell-drafts");
  private final HBox row;

  PatientCell(Texts texts) {
    this.texts = texts;
    name.setMinWidth(0);
    facts.setMinWidth(0);
    VBox right = new VBox(2, visits, drafts);
    right.setAlignment(Pos.CENTER_RIGHT);
    row = new HBox(10, new VBox(2, name, facts), Make.gap(), right);
    row.setAlignment(Pos.CENTER_LEFT);
    setPrefWidth(0);
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
            .map(day -> Shell.say(texts, "cell.visits", item.evaluations(), texts.date(day)))
            .orElse(Shell.say(texts, "cell.no-visit")));
    drafts.setText(item.drafts() == 0 ? "" : Shell.say(texts, "cell.drafts", item.drafts()));
    setAccessibleText(
        String.join(", ", patient.name(), facts.getText(), visits.getText(), drafts.getText()));
    setGraphic(row);
  }
}
