package styloid.model;

import java.util.Objects;

/** Where a norm, formula or threshold comes from. */
public record Source(String citation, SourceStatus status) {
  public static final String NO_SOURCE = "common practice, no source";

  public Source {
    Objects.requireNonNull(citation, "citation");
    Objects.requireNonNull(status, "status");
    if (citation.isBlank()) {
      throw new IllegalArgumentException("a source needs a citation");
    }
  }

  public static Source verified(String citation) {
    return new Source(citation, SourceStatus.VERIFIED);
  }

  public static Source memory(String citation) {
    return new Source(citation, SourceStatus.MEMORY);
  }

  public static Source commonPractice() {
    return new Source(NO_SOURCE, SourceStatus.COMMON_PRACTICE);
  }
}
