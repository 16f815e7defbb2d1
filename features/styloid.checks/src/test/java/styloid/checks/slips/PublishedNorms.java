package styloid.checks.slips;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import styloid.model.Patient.Sex;
import styloid.model.Side;

/**
 * Means and standard deviations the corpus is drawn from, read from the tables the modules ship.
 * Forces: Mathiowetz V and others. 1985. Arch Phys Med Rehabil 66(2):69-74. Motions: Boone DC, Azen
 * SP. 1979. J Bone Joint Surg Am 61(5):756-759, else the first row of the gathered values of Norkin
 * and White. Where a table has no standard deviation one is assumed, see {@link #ASSUMED_SD}.
 */
final class PublishedNorms {
  /** Degrees; assumed for motions without a published standard deviation, near those with one. */
  private static final double ASSUMED_SD = 6;

  /** Degrees; the same for extension of joints that stop about neutral. */
  private static final double ASSUMED_SD_AT_NEUTRAL = 3;

  private static final double KG_OF_LB = 0.45359237;

  private final List<Map<String, String>> forces = read("/styloid/grip/mathiowetz-1985.csv");
  private final Map<String, Norm> motions = new HashMap<>();

  /** A mean with its standard deviation, in kg or degrees. */
  record Norm(double mean, double sd) {}

  PublishedNorms() {
    for (Map<String, String> row : read("/styloid/goniometry/rom_normal_values.csv")) {
      if (!row.get("mean").isEmpty()) {
        double mean = Double.parseDouble(row.get("mean"));
        double sd = Math.abs(mean) < 15 ? ASSUMED_SD_AT_NEUTRAL : ASSUMED_SD;
        motions.merge(row.get("motion"), new Norm(mean, sd), PublishedNorms::nearer);
      }
    }
    for (Map<String, String> row : read("/styloid/goniometry/rom_boone_azen_1979.csv")) {
      if (row.get("group").equals("all") && !row.get("sd").isEmpty()) {
        motions.put(
            row.get("motion"),
            new Norm(Double.parseDouble(row.get("mean")), Double.parseDouble(row.get("sd"))));
      }
    }
  }

  /** The less extreme of two printed values: the higher ones are seldom reached. */
  private static Norm nearer(Norm one, Norm two) {
    return Math.abs(one.mean()) <= Math.abs(two.mean()) ? one : two;
  }

  Norm motion(String id) {
    Norm norm = motions.get(id);
    if (norm == null) {
      throw new IllegalArgumentException("no table has the motion " + id);
    }
    return norm;
  }

  boolean hasMotion(String id) {
    return motions.containsKey(id);
  }

  /** In kg; {@code measure} is power, tip, key or palmar. */
  Norm force(String measure, Sex sex, int age, Side side) {
    for (Map<String, String> row : forces) {
      String last = row.get("age_max_years");
      if (row.get("measure").equals(measure)
          && row.get("sex").equals(sex == Sex.MALE ? "M" : "F")
          && row.get("hand").equals(side == Side.RIGHT ? "R" : "L")
          && Integer.parseInt(row.get("age_min_years")) <= age
          && (last.isEmpty() || age <= Integer.parseInt(last))) {
        return new Norm(
            Double.parseDouble(row.get("mean")) * KG_OF_LB,
            Double.parseDouble(row.get("sd")) * KG_OF_LB);
      }
    }
    return force(measure, sex, age - 5, side);
  }

  private static List<Map<String, String>> read(String resource) {
    ArrayList<Map<String, String>> rows = new ArrayList<>();
    try (InputStream in = PublishedNorms.class.getResourceAsStream(resource)) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      String[] head = null;
      for (String line : text.lines().filter(l -> !l.isBlank() && !l.startsWith("#")).toList()) {
        String[] cells = line.split(",", -1);
        if (head == null) {
          head = cells;
          continue;
        }
        HashMap<String, String> row = new HashMap<>();
        for (int at = 0; at < head.length && at < cells.length; at++) {
          row.put(head[at], cells[at]);
        }
        rows.add(row);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return rows;
  }
}
