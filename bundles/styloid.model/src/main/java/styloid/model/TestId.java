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
  public String toString() {
    return value;
  }
}
