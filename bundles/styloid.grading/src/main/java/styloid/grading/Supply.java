package styloid.grading;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import styloid.model.Digit;
import styloid.model.ResultId;
import styloid.model.Source;

/**
 * A nerve or root that grades are gathered by.
 *
 * @param id {@code nerve-...} or {@code root-...}
 * @param nerveOrRoot the nerve as in nerves.csv, or the root
 * @param results ids of {@code lowest}, {@code median} and {@code count}
 * @param served where its muscles stand among the places of one side
 */
record Supply(String id, String nerveOrRoot, Map<String, ResultId> results, List<Served> served) {
  static final List<String> RESULTS = List.of("lowest", "median", "count");

  /**
   * A place it serves.
   *
   * @param at number of the place among those of one side: motions as in the catalogue, then digits
   * @param sources those of its muscles there
   */
  record Served(int at, List<Source> sources) {}

  private static Supply of(String kind, String supply, List<Motion> catalogue) {
    String id = kind + "-" + supply.toLowerCase(Locale.ROOT);
    LinkedHashMap<String, ResultId> results = new LinkedHashMap<>();
    RESULTS.forEach(what -> results.put(what, new ResultId(id + "-" + what)));
    return new Supply(id, supply, results, served(supply, catalogue));
  }

  private static List<Served> served(String supply, List<Motion> catalogue) {
    ArrayList<Served> served = new ArrayList<>();
    int at = 0;
    for (Motion motion : catalogue) {
      for (Digit digit : motion.eachDigit()) {
        List<Source> sources =
            motion.muscles(digit).stream()
                .filter(m -> m.nerves().contains(supply) || m.roots().contains(supply))
                .map(Muscle::source)
                .distinct()
                .toList();
        if (!sources.isEmpty()) {
          served.add(new Served(at, sources));
        }
        at++;
      }
    }
    return List.copyOf(served);
  }

  /** Nerves as the catalogue comes to them, then roots, cranial first. */
  static List<Supply> all(List<Motion> catalogue) {
    LinkedHashSet<String> nerves = new LinkedHashSet<>();
    TreeSet<String> roots = new TreeSet<>();
    for (Motion motion : catalogue) {
      for (Muscle muscle : motion.allMuscles()) {
        nerves.addAll(muscle.nerves());
        roots.addAll(muscle.roots());
      }
    }
    ArrayList<Supply> lines = new ArrayList<>();
    nerves.forEach(nerve -> lines.add(of("nerve", nerve, catalogue)));
    roots.forEach(root -> lines.add(of("root", root, catalogue)));
    return lines;
  }
}
