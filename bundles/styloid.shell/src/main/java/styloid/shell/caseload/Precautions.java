package styloid.shell.caseload;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import styloid.model.Precaution;
import styloid.shell.frame.Make;
import styloid.shell.frame.Shell;
import styloid.spi.Texts;

/** The editor of a patient's precautions: one row each. */
final class Precautions extends VBox {
  private final Texts texts;
  private final VBox rows = new VBox(8);

  Precautions(Texts texts) {
    super(8);
    this.texts = texts;
    HBox head =
        new HBox(
            10,
            Make.word(Shell.say(texts, "precautions.title"), "section-head"),
            Make.gap(),
            Make.button(Shell.say(texts, "precautions.add"), this::addEmpty));
    head.setAlignment(Pos.CENTER_LEFT);
    getChildren().addAll(head, Make.text(Shell.say(texts, "precautions.hint"), "quiet"), rows);
  }

  private void addEmpty() {
    PrecautionRow row = new PrecautionRow(texts, Optional.empty(), this::remove);
    rows.getChildren().add(row);
    row.begin();
  }

  void add(Precaution precaution) {
    rows.getChildren().add(new PrecautionRow(texts, Optional.of(precaution), this::remove));
  }

  private void remove(PrecautionRow row) {
    rows.getChildren().remove(row);
  }

  /** All of them; empty when one is incomplete, which then says so. */
  Optional<List<Precaution>> read() {
    ArrayList<Precaution> all = new ArrayList<>();
    boolean complete = true;
    for (var node : rows.getChildren()) {
      Optional<Precaution> one = ((PrecautionRow) node).read();
      one.ifPresent(all::add);
      complete &= one.isPresent();
    }
    return complete ? Optional.of(all) : Optional.empty();
  }
}
