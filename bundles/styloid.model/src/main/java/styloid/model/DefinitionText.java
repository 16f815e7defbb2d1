package styloid.model;

import java.util.Objects;

/**
 * A test's definition and labels as stored with the records that used it, so that a record outlives
 * its module.
 *
 * @param text the neutral written form (JSON)
 */
public record DefinitionText(TestId test, String version, String text) {
  public DefinitionText {
    Objects.requireNonNull(test, "test");
    Objects.requireNonNull(version, "version");
    Objects.requireNonNull(text, "text");
  }
}
