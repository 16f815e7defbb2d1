package styloid.figure;

/**
 * Directions of a bone of a right limb, each one metre long and square to the others.
 *
 * @param distal along the bone, away from the trunk
 * @param volar toward the palm (of the upper arm: toward the front in the anatomical position)
 * @param radial toward the thumb side
 */
record Frame(Vec distal, Vec volar, Vec radial) {
  /** Right arm hanging, palm to the front. */
  static final Frame HANGING = new Frame(new Vec(0, -1, 0), new Vec(0, 0, 1), new Vec(-1, 0, 0));

  /** Bent toward the palm side by so many degrees. */
  Frame flexed(double degrees) {
    double c = cos(degrees);
    double s = sin(degrees);
    return new Frame(mix(distal, c, volar, s), mix(volar, c, distal, -s), radial);
  }

  /** Bent toward the thumb side. */
  Frame deviated(double degrees) {
    double c = cos(degrees);
    double s = sin(degrees);
    return new Frame(mix(distal, c, radial, s), volar, mix(radial, c, distal, -s));
  }

  /** Turned about its length so that the thumb side goes toward the palm side, as in pronation. */
  Frame turned(double degrees) {
    double c = cos(degrees);
    double s = sin(degrees);
    return new Frame(distal, mix(volar, c, radial, -s), mix(radial, c, volar, s));
  }

  /** From the origin of the frame, so far along each direction. */
  Vec at(Vec origin, double alongDistal, double alongVolar, double alongRadial) {
    return origin
        .plus(distal.times(alongDistal))
        .plus(volar.times(alongVolar))
        .plus(radial.times(alongRadial));
  }

  private static Vec mix(Vec a, double ofA, Vec b, double ofB) {
    return a.times(ofA).plus(b.times(ofB));
  }

  private static double cos(double degrees) {
    return Math.cos(Math.toRadians(degrees));
  }

  private static double sin(double degrees) {
    return Math.sin(Math.toRadians(degrees));
  }
}
