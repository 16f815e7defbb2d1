package styloid.checks.faulty;

import java.util.List;
import styloid.model.PatientContext;
import styloid.model.Result;

/** Calls itself until the stack is full. */
public final class CallsItself extends Plain {
  @Override
  public List<Result> results(PatientContext context) {
    return results(context);
  }
}
