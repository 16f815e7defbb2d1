package styloid.grading;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import styloid.model.ResultId;

/**
 * A nerve or root that grades are gathered by.
 *
 * @param id {@code nerve-...} or {@code root-...}
 * @param nerveOrRoot the nerve as in nerves.csv, or the root
 * @param results ids of {@code lowest}, {@code median} and {@code count}
 */
record Supply(String id, String nerveOrRoot, Map<String, ResultId> results) {
  static final List<String> RESULTS = List.of("lowest", "median", "count");

  private static Supply of(String kind, String supply) {
    String id = kind + "-" + supply.toLowerCase(Locale.ROOT);
    LinkedHashMap<String, ResultId> results = new LinkedHashMap<>();
    RESULTS.forEach(what -> results.put(what, new ResultId(id + "-" + what)));
    return new Supply(id, supply, results);
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
    nerves.forEach(nerve -> lines.add(of("nerve", nerve)));
    roots.forEach(root -> lines.add(of("root", root)));
    return lines;
  }

  boolean gathers(Muscle muscle) {
    return muscle.nerves().contains(nerveOrRoot) || muscle.roots().contains(nerveOrRoot);
  }
}
