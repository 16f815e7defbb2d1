package styloid.plan;

/**
 * What each kind of change costs, from 1 to 1000, in parts of the trouble it makes. The standard
 * weights are common practice, no source: turning the patient over takes about a minute, placing
 * the limb anew a quarter of that, turning the forearm a few seconds.
 */
public record Weights(int body, int support, int rotation) {
  public static final Weights STANDARD = new Weights(10, 3, 1);

  public Weights {
    for (int weight : new int[] {body, support, rotation}) {
      if (weight < 1 || weight > 1000) {
        throw new IllegalArgumentException("a weight must be 1 to 1000: " + weight);
      }
    }
  }

  public int of(Changes changes) {
    return changes.body() * body + changes.support() * support + changes.rotation() * rotation;
  }
}
