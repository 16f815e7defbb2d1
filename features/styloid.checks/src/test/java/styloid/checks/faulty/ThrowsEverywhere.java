package styloid.checks.faulty;

import java.util.List;
import styloid.model.PatientContext;
import styloid.model.Result;
import styloid.spi.Sheet;

/** Throws whatever it is asked, but for what it is. */
public final class ThrowsEverywhere extends Plain {
  @Override
  public List<Result> results(PatientContext context) {
    throw new IllegalStateException("results");
  }

  @Override
  public List<Sheet> sheets(PatientContext context, List<Result> results) {
    throw new AssertionError("sheets");
  }
}
