package styloid.checks.faulty;

import java.util.List;
import styloid.model.PatientContext;
import styloid.model.Result;

/** Was built against something that is not here. */
public final class FailsToLink extends Plain {
  @Override
  public List<Result> results(PatientContext context) {
    throw new NoSuchMethodError("an older suite had it");
  }
}
