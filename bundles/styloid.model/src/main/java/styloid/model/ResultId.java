package styloid.model;

/** Stable name of a result: lower-case letters, digits and single hyphens. */
public record ResultId(String value) implements Comparable<ResultId> {
  public ResultId {
    Codes.slug("result id", value);
  }

  @Override
  public int compareTo(ResultId other) {
    return value.compareTo(other.value);
  }

  @Override
  public String toString() {
    return value;
  }
}
