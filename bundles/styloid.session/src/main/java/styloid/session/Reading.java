package styloid.session;

import java.util.List;
import java.util.Optional;
import styloid.model.Evaluation;
import styloid.model.PatientId;
import styloid.model.PatientRecord;
import styloid.model.Precaution;
import styloid.store.CaseloadRow;
import styloid.store.PatientStore;
import styloid.store.StoreException;

/** What the store is only asked for, whatever is open. */
abstract class Reading implements Session {
  /** The store that is there now; null while there is none. */
  volatile PatientStore store;

  @Override
  public final List<CaseloadRow> caseload(String search, int limit) throws StoreException {
    return Records.opened(store).caseload(search, limit);
  }

  @Override
  public final List<Evaluation> evaluations(PatientId patient) throws StoreException {
    return Records.opened(store).evaluations(patient);
  }

  @Override
  public final List<Precaution> precautions(PatientId patient) throws StoreException {
    return Records.opened(store).precautions(patient);
  }

  @Override
  public final Optional<PatientRecord> patientRecord(PatientId id) throws StoreException {
    return Records.opened(store).record(id);
  }
}
