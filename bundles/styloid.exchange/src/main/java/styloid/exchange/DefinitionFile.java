package styloid.exchange;

import java.util.List;
import java.util.Optional;
import styloid.model.DefinitionText;
import styloid.spi.TestDefinition;

/** The neutral written form of a test's definition and labels (JSON). */
public final class DefinitionFile {
  private DefinitionFile() {}

  /** What came of reading a stored definition. */
  public record Read(Optional<TestDefinition> definition, List<FileProblem> problems) {}

  /** The same definition always gives the same characters. */
  public static DefinitionText write(TestDefinition definition) {
    throw new UnsupportedOperationException("not yet");
  }

  public static Read read(DefinitionText text) {
    throw new UnsupportedOperationException("not yet");
  }
}
