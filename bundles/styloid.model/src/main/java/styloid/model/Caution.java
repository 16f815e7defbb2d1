package styloid.model;

import java.util.Objects;

/**
 * A warning shown before and while a test is done, and in the workbook. Its words stand in the
 * labels of its test under {@code caution.<id>}.
 */
public record Caution(String id, Source source) {
  public Caution {
    Codes.slug("caution", id);
    Objects.requireNonNull(source, "source");
  }
}
