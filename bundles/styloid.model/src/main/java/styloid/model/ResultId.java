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
  public boolean equals(Object other) {
    return this == other || other instanceof ResultId that && value.equals(that.value);
  }

  @Override
  public int hashCode() {
    return value.hashCode();
  }

  @Override
  public String toString() {
    return value;
  }
}
