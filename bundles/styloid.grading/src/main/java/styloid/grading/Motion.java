package styloid.grading;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import styloid.model.Codes;
import styloid.model.Digit;
import styloid.model.DigitJoint;
import styloid.model.Region;
import styloid.spi.Picture;
import styloid.spi.Position;

/**
 * One motion of the catalogue, as in motions.csv. Its words (position, support, resistance and so
 * on) stand in the labels under {@code guide.<id>.<topic>}.
 *
 * @param loads regions a precaution on which withholds it
 * @param joint which joint of a digit it moves; empty where it moves none
 * @param gravityReduced where gravity hardly matters, the position in which a contraction is felt
 *     for
 * @param reducedPicture without resistance; its pose differs from the first where the file says so
 * @param movers prime movers in order of importance
 */
record Motion(
    String id,
    Region region,
    Set<Region> loads,
    Set<Digit> digits,
    Optional<DigitJoint> joint,
    Criteria criteria,
    Position position,
    Position gravityReduced,
    Picture picture,
    Picture reducedPicture,
    List<String> cautions,
    Names names,
    List<Mover> movers) {

  /** A prime mover of these digits; {@link Digit#NONE} where the motion is not of a digit. */
  record Mover(Muscle muscle, Set<Digit> digits) {}

  /** Its digits, radial first. */
  Set<Digit> eachDigit() {
    return Collections.unmodifiableSet(EnumSet.copyOf(digits));
  }

  /** Prime movers at one of the motion's digits. */
  List<Muscle> muscles(Digit digit) {
    return movers.stream().filter(m -> m.digits().contains(digit)).map(Mover::muscle).toList();
  }

  /** The catalogue, in the order of the file. */
  static List<Motion> catalogue(Map<String, Muscle> muscles) {
    return Csv.rows("motions.csv").stream().map(row -> read(row, muscles)).toList();
  }

  private static Motion read(Map<String, String> row, Map<String, Muscle> muscles) {
    Set<Digit> digits = codes(Digit.class, row.get("digits"), " ");
    return new Motion(
        row.get("id"),
        Codes.parse(Region.class, row.get("region")),
        codes(Region.class, row.get("loads"), " "),
        digits,
        joint(row.get("joint")),
        Codes.parse(Criteria.class, row.get("criteria")),
        position(row.get("position")),
        position(row.get("gravity_reduced")),
        Pictures.first(row),
        Pictures.reduced(row),
        words(row.get("cautions")),
        Names.of(row.get("id"), Optional.of(row.get("goniometry")).filter(s -> !s.isEmpty())),
        List.of(row.get("muscles").split(";")).stream()
            .map(m -> mover(m, digits, muscles))
            .toList());
  }

  private static Optional<DigitJoint> joint(String cell) {
    return cell.isEmpty() ? Optional.empty() : Optional.of(Codes.parse(DigitJoint.class, cell));
  }

  static List<String> words(String cell) {
    return cell.isEmpty() ? List.of() : List.of(cell.split(" "));
  }

  static <E extends Enum<E>> Set<E> codes(Class<E> type, String cell, String between) {
    TreeSet<E> found = new TreeSet<>();
    for (String code : cell.split(between)) {
      found.add(Codes.parse(type, code));
    }
    return found;
  }

  private static Position position(String cell) {
    String[] parts = cell.split("/");
    return new Position(
        Codes.parse(Position.Body.class, parts[0]),
        Codes.parse(Position.Support.class, parts[1]),
        Codes.parse(Position.Rotation.class, parts[2]));
  }

  private static Mover mover(String cell, Set<Digit> digits, Map<String, Muscle> muscles) {
    int at = cell.indexOf('@');
    String name = at < 0 ? cell : cell.substring(0, at);
    Muscle muscle = muscles.get(name);
    if (muscle == null) {
      throw new IllegalArgumentException("muscles.csv has no " + name);
    }
    return new Mover(muscle, at < 0 ? digits : codes(Digit.class, cell.substring(at + 1), "\\+"));
  }

  /** Names of the muscles at any digit, each once. */
  List<Muscle> allMuscles() {
    ArrayList<Muscle> all = new ArrayList<>();
    movers.forEach(m -> all.add(m.muscle()));
    return all;
  }
}
