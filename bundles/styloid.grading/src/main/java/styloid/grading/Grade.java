package styloid.grading;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Grades of strength from weakest to strongest; {@link #AT_LEAST_3} is a bound, no grade. */
enum Grade {
  G0("0"),
  G1("1"),
  G2_MINUS("2-"),
  G2("2"),
  G2_PLUS("2+"),
  G3_MINUS("3-"),
  G3("3"),
  G3_PLUS("3+"),
  G4_MINUS("4-"),
  G4("4"),
  G4_PLUS("4+"),
  G5("5"),
  /** Full range against gravity, resistance withheld. */
  AT_LEAST_3("at-least-3");

  private final String code;

  Grade(String code) {
    this.code = code;
  }

  String code() {
    return code;
  }

  /** Whether it has a place between the others. */
  boolean ranked() {
    return this != AT_LEAST_3;
  }

  /** Grade 4 minus or better. */
  boolean strong() {
    return ranked() && compareTo(G4_MINUS) >= 0;
  }

  /** Those that can be typed, weakest first. */
  static List<Grade> rankedGrades() {
    return Stream.of(values()).filter(Grade::ranked).toList();
  }

  static Optional<Grade> of(String code) {
    return Stream.of(values()).filter(g -> g.code.equals(code)).findFirst();
  }
}
