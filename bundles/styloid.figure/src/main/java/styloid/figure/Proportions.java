package styloid.figure;

import java.util.List;

/**
 * Lengths of the drawn person in metres. Upper arm, forearm and hand are 0.186, 0.146 and 0.108 of
 * a body height of 1.70 m (Drillis and Contini 1966), bones of the digits shares of the length of
 * the hand (Buchholz, Armstrong and Goldstein 1992); both from memory. A picture's proportions,
 * never a norm.
 */
final class Proportions {
  static final double HEIGHT = 1.70;
  static final double UPPER_ARM = 0.186 * HEIGHT;
  static final double FOREARM = 0.146 * HEIGHT;
  static final double HAND = 0.108 * HEIGHT;

  /** Middle of the body to the middle of the shoulder joint. */
  static final double HALF_SHOULDERS = 0.108 * HEIGHT;

  /** Shoulder joint to hip, upright. */
  static final double TRUNK = 0.288 * HEIGHT;

  /**
   * One finger: its knuckle in the hand's directions from the wrist, its bones, its natural splay
   * in degrees and its thickness against that of the middle finger.
   */
  record Finger(
      double knuckleDistal,
      double knuckleVolar,
      double knuckleRadial,
      double proximal,
      double middle,
      double distal,
      double splay,
      double girth) {}

  /** Index to little finger. */
  static final List<Finger> FINGERS =
      List.of(
          finger(0.470, -0.004, 0.0265, 0.245, 0.143, 0.097, 3, 0.97),
          finger(0.478, -0.007, 0.0055, 0.266, 0.170, 0.108, 0, 1.0),
          finger(0.446, -0.005, -0.0150, 0.244, 0.165, 0.107, -3, 0.95),
          finger(0.405, 0.000, -0.0335, 0.204, 0.117, 0.093, -7, 0.84));

  static final double THUMB_METACARPAL = 0.251 * HAND;
  static final double THUMB_PROXIMAL = 0.196 * HAND;
  static final double THUMB_DISTAL = 0.158 * HAND;

  private Proportions() {}

  private static Finger finger(
      double knuckle,
      double volar,
      double radial,
      double proximal,
      double middle,
      double distal,
      double splay,
      double girth) {
    return new Finger(
        knuckle * HAND, volar, radial, proximal * HAND, middle * HAND, distal * HAND, splay, girth);
  }
}
