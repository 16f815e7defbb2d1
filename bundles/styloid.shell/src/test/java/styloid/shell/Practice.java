package styloid.shell;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import styloid.model.ItemKey;
import styloid.model.ItemKind;
import styloid.model.Quantity;
import styloid.model.Side;
import styloid.model.TherapistId;
import styloid.model.Value;
import styloid.session.OpenEvaluation;
import styloid.spi.TestDefinition;
import styloid.spi.Texts;
import styloid.store.StoreException;

/** An evaluation just begun, for tests that need no window. */
public final class Practice {
  private final Clinic clinic = new Clinic();

  public Practice() {
    try {
      var patient = clinic.patient(7, "Petra Practice", "1980-01-01", Set.of(Side.LEFT), "");
      clinic.session.savePatient(patient, List.of());
      clinic.session.begin(patient.id(), Clinic.DAY, new TherapistId("A. Therapist"));
    } catch (StoreException e) {
      throw new IllegalStateException(e);
    }
  }

  public static Texts words() {
    return Clinic.words();
  }

  public OpenEvaluation now() {
    return clinic.session.current().orElseThrow();
  }

  public void record(ItemKey key, Value value) {
    clinic.session.record(key, value, false);
  }

  public void undo() {
    clinic.session.undo();
  }

  /** Records a likely number for the first item that takes one. */
  public void recordNumber() {
    for (TestDefinition test : clinic.session.tests()) {
      for (ItemKey key : test.keys()) {
        if (test.item(key.item()).orElseThrow().kind() instanceof ItemKind.Number number) {
          record(key, new Quantity(new BigDecimal(number.likelyMax().intValue()), number.unit()));
          return;
        }
      }
    }
  }
}
