package styloid.model;

/** The name a therapist signs entries with; never blank. */
public record TherapistId(String value) {
  public TherapistId {
    if (value == null || value.isBlank() || value.length() > 200) {
      throw new IllegalArgumentException("a therapist needs a name of 1 to 200 characters");
    }
  }

  @Override
  public String toString() {
    return value;
  }
}
