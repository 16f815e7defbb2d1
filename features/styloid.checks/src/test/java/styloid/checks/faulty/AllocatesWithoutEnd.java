package styloid.checks.faulty;

import java.util.ArrayList;
import java.util.List;
import styloid.model.PatientContext;
import styloid.model.Result;

/** Holds on to more and more memory. */
public final class AllocatesWithoutEnd extends Plain {
  @Override
  public List<Result> results(PatientContext context) {
    ArrayList<long[]> held = new ArrayList<>();
    while (context != null) {
      held.add(new long[1 << 20]);
    }
    return List.of();
  }
}
