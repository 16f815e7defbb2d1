package styloid.checks.faulty;

import java.util.List;
import styloid.model.PatientContext;
import styloid.model.Result;

/** Gives null where a list is due. */
public final class GivesNothing extends Plain {
  @Override
  public List<Result> results(PatientContext context) {
    return null;
  }
}
