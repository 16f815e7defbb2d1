package styloid.model;

/** As what somebody works with a patient. Says nothing of rights in the program. */
public enum Capacity {
  /** Licensed to practise here on their own; may override a precaution. */
  LICENSED_THERAPIST,
  /** Works under a licensed therapist. */
  LEARNER_OR_ASSISTANT;

  public String code() {
    return Codes.of(this);
  }
}
