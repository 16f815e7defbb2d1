package styloid.checks.faulty;

import java.util.List;
import styloid.model.PatientContext;
import styloid.model.Result;

/** Never comes back. */
public final class LoopsForEver extends Plain {
  @Override
  public List<Result> results(PatientContext context) {
    while (context != null) {
      Thread.onSpinWait();
    }
    return List.of();
  }
}
