package styloid.shell.frame;

import java.time.LocalDate;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Polygon;
import styloid.model.Patient;
import styloid.model.Precaution;
import styloid.spi.Texts;

/** Who is examined and under which limits; stands on every screen of a patient. */
public final class Banner extends VBox {
  private Patient patient;
  private List<Precaution> precautions;

  public Banner() {
    super(4);
    getStyleClass().add("banner");
  }

  /** Draws patient and limits as of a day; nothing is drawn anew when nothing changed. */
  public void show(Patient who, List<Precaution> limits, LocalDate day, Texts texts) {
    if (who.equals(patient) && limits.equals(precautions)) {
      return;
    }
    patient = who;
    precautions = limits;
    FlowPane facts = new FlowPane(16, 2);
    facts.setRowValignment(javafx.geometry.VPos.BASELINE);
    facts.getChildren().add(bound(Make.text(who.name(), "banner-name"), facts));
    for (String fact : BannerText.facts(who, day, texts)) {
      facts.getChildren().add(Make.word(fact, "banner-fact"));
    }
    FlowPane chips = new FlowPane(8, 4);
    List<String> inForce = BannerText.inForce(limits, day, texts);
    for (String limit : inForce) {
      chips.getChildren().add(bound(limit(limit), chips));
    }
    if (inForce.isEmpty()) {
      chips.getChildren().add(Make.word(Shell.say(texts, "banner.no-precautions"), "banner-fact"));
    }
    getChildren().setAll(facts, chips);
  }

  /** Breaks into lines rather than be cut off where there is little width. */
  private static <T extends Region> T bound(T part, FlowPane in) {
    in.setMinWidth(0);
    part.maxWidthProperty().bind(in.widthProperty());
    return part;
  }

  private static HBox limit(String words) {
    Label text = Make.text(words, "limit-text");
    HBox chip = new HBox(6, warning(), text);
    chip.setAlignment(Pos.CENTER_LEFT);
    chip.getStyleClass().add("limit");
    return chip;
  }

  /** A triangle with its point up: the shape of every warning. */
  public static Polygon warning() {
    Polygon triangle = new Polygon(0, 11, 6, 0, 12, 11);
    triangle.getStyleClass().add("warning-mark");
    return triangle;
  }
}
