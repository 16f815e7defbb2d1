package styloid.checks.faulty;

import java.util.Arrays;
import java.util.List;
import styloid.model.PatientContext;
import styloid.model.Result;

/** Gives a list with nothing in it where a result is due. */
public final class HoldsNull extends Plain {
  @Override
  public List<Result> results(PatientContext context) {
    return Arrays.asList((Result) null);
  }
}
