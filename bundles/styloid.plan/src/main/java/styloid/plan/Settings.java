package styloid.plan;

import java.util.Optional;
import styloid.spi.Position;
import styloid.spi.Position.Body;
import styloid.spi.Position.Rotation;
import styloid.spi.Position.Support;

/**
 * Positions and placements as small numbers, so that a search can count changes by looking them up.
 * Part 0 means "any" in what a step needs and "not known" in how the patient is placed.
 */
final class Settings {
  static final int ROTATIONS = Rotation.values().length + 1;
  static final int SUPPORTS = Support.values().length + 1;
  static final int BODIES = Body.values().length + 1;
  static final int COUNT = BODIES * SUPPORTS * ROTATIONS;

  /** Parts and followers of every setting, so that a search need not divide. */
  private static final byte[] BODY = new byte[COUNT];

  private static final byte[] SUPPORT = new byte[COUNT];
  private static final byte[] PAIR = new byte[COUNT];
  private static final byte[] ROTATION = new byte[COUNT];
  private static final short[] AFTER = new short[COUNT * COUNT];

  static {
    for (int setting = 0; setting < COUNT; setting++) {
      BODY[setting] = (byte) (setting / (SUPPORTS * ROTATIONS));
      SUPPORT[setting] = (byte) (setting / ROTATIONS % SUPPORTS);
      PAIR[setting] = (byte) (setting / ROTATIONS);
      ROTATION[setting] = (byte) (setting % ROTATIONS);
    }
    for (int from = 0; from < COUNT; from++) {
      for (int need = 0; need < COUNT; need++) {
        AFTER[from * COUNT + need] =
            (short)
                number(
                    body(need) == 0 ? body(from) : body(need),
                    support(need) == 0 ? support(from) : support(need),
                    rotation(need) == 0 ? rotation(from) : rotation(need));
      }
    }
  }

  private final int[] costs = new int[COUNT * COUNT];
  private final Weights weights;

  Settings(Weights weights) {
    this.weights = weights;
    for (int from = 0; from < COUNT; from++) {
      for (int to = 0; to < COUNT; to++) {
        costs[from * COUNT + to] =
            part(body(from), body(to), weights.body())
                + part(support(from), support(to), weights.support())
                + part(rotation(from), rotation(to), weights.rotation());
      }
    }
  }

  private static int part(int from, int to, int weight) {
    return from == 0 || to == 0 || from == to ? 0 : weight;
  }

  static int of(Optional<Position> position) {
    return position
        .map(p -> number(p.body().ordinal() + 1, p.support().ordinal() + 1, turned(p.rotation())))
        .orElse(0);
  }

  static int of(Placement placement) {
    return number(
        placement.body().map(b -> b.ordinal() + 1).orElse(0),
        placement.support().map(s -> s.ordinal() + 1).orElse(0),
        placement.rotation().map(Settings::turned).orElse(0));
  }

  private static int turned(Rotation rotation) {
    return rotation == Rotation.ANY ? 0 : rotation.ordinal() + 1;
  }

  private static int number(int body, int support, int rotation) {
    return (body * SUPPORTS + support) * ROTATIONS + rotation;
  }

  static int body(int setting) {
    return BODY[setting];
  }

  static int support(int setting) {
    return SUPPORT[setting];
  }

  static int rotation(int setting) {
    return ROTATION[setting];
  }

  /** Body and support alone. */
  static int pair(int setting) {
    return PAIR[setting];
  }

  /** The setting once a patient placed as {@code from} is placed for {@code need}. */
  static int after(int from, int need) {
    return AFTER[from * COUNT + need];
  }

  Weights weights() {
    return weights;
  }

  int cost(int from, int to) {
    return costs[from * COUNT + to];
  }

  /**
   * Whether a second visit to a body position always costs more than anything that moving its steps
   * up to the first visit can add: both other parts, on either side of what is moved.
   */
  boolean bodyOutweighs() {
    return weights.body() > 2 * (weights.support() + weights.rotation());
  }
}
