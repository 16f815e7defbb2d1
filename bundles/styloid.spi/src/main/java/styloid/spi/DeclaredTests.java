package styloid.spi;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.osgi.annotation.versioning.ProviderType;
import styloid.model.FileProblem;
import styloid.model.PatientContext;
import styloid.model.TestId;

/** Reads and judges tests declared in a file, offered as an OSGi service. */
@ProviderType
public interface DeclaredTests {
  /** Waits until the tests that lay in the clinic's folder at the start are there. */
  void settle();

  /** Waits until formulas are warm, so that the first ones are not taken for a stuck module. */
  void warm();

  /**
   * Reads the text of a declared test.
   *
   * @param beside text of a file that lies beside it, by its name
   * @param taken ids other tests have, besides the built-in ones
   */
  Read read(String text, Function<String, Optional<String>> beside, Set<TestId> taken);

  /** The module, or every problem found. */
  record Read(Optional<TestModule> module, List<FileProblem> problems) {
    public Read {
      problems = List.copyOf(problems);
    }
  }

  /** Reads made-up answers of a test, to try it without a patient. */
  Tried answers(TestDefinition test, String text);

  /** An evaluation with the answers, or every problem found. */
  record Tried(Optional<PatientContext> context, List<FileProblem> problems) {
    public Tried {
      problems = List.copyOf(problems);
    }
  }
}
