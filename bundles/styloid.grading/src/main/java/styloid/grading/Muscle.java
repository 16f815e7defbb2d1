package styloid.grading;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import styloid.model.Codes;
import styloid.model.Source;
import styloid.model.SourceStatus;

/**
 * A muscle with its supply, as in muscles.csv: the root table of the Medical Research Council
 * memorandum checked against later teaching tables, each row with its own status.
 *
 * @param nerves ids it is rolled up under, see nerves.csv: a branch and the nerve it comes from
 * @param roots such as {@code C7}, cranial first
 * @param mainRoots those starred in the table; empty when none is
 */
record Muscle(
    String name,
    String nerveName,
    List<String> nerves,
    List<String> roots,
    List<String> mainRoots,
    SourceStatus status) {

  static final String CITATION =
      "Root and nerve table after the Medical Research Council, Aids to the Examination of the"
          + " Peripheral Nervous System, Memorandum 45, 1976";

  Source source() {
    return new Source(CITATION, status);
  }

  /** Every muscle by name, in the order of the table. */
  static Map<String, Muscle> table() {
    LinkedHashMap<String, List<String>> nerves = new LinkedHashMap<>();
    for (Map<String, String> row : Csv.rows("nerves.csv")) {
      nerves.put(row.get("peripheral_nerve"), List.of(row.get("rolled_up_under").split(" ")));
    }
    LinkedHashMap<String, Muscle> muscles = new LinkedHashMap<>();
    for (Map<String, String> row : Csv.rows("muscles.csv")) {
      muscles.put(row.get("muscle"), read(row, nerves));
    }
    return muscles;
  }

  private static Muscle read(Map<String, String> row, Map<String, List<String>> nerves) {
    String nerve = row.get("peripheral_nerve");
    if (!nerves.containsKey(nerve)) {
      throw new IllegalArgumentException("nerves.csv has no row for " + nerve);
    }
    ArrayList<String> roots = new ArrayList<>();
    ArrayList<String> main = new ArrayList<>();
    for (String root : row.get("roots").split(";")) {
      String plain = root.replace("*", "");
      roots.add(plain);
      if (root.endsWith("*")) {
        main.add(plain);
      }
    }
    SourceStatus status = Codes.parse(SourceStatus.class, row.get("status"));
    return new Muscle(row.get("muscle"), nerve, nerves.get(nerve), roots, main, status);
  }
}
