package styloid.model;

/** Stable name of a test: lower-case letters, digits and single hyphens. */
public record TestId(String value) implements Comparable<TestId> {
  public TestId {
    Codes.slug("test id", value);
  }

  @Override
  public int compareTo(TestId other) {
    return value.compareTo(other.value);
  }

  @Override
  public boolean equals(Object other) {
    return this == other || other instanceof TestId that && value.equals(that.value);
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
