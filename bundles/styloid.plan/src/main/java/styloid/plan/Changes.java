package styloid.plan;

/** How often the patient's body, the limb's support and the forearm's rotation are changed. */
public record Changes(int body, int support, int rotation) {
  public static final Changes NONE = new Changes(0, 0, 0);

  /** All changes, each counted once. */
  public int total() {
    return body + support + rotation;
  }

  public Changes plus(Changes other) {
    return new Changes(body + other.body, support + other.support, rotation + other.rotation);
  }

  public Changes minus(Changes other) {
    return new Changes(body - other.body, support - other.support, rotation - other.rotation);
  }
}
