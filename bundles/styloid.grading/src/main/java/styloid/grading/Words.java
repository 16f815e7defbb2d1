package styloid.grading;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import styloid.model.Codes;
import styloid.spi.Labels;

/**
 * Gives every item, result and list of prime movers its words from those of its motion and kind, so
 * that a translator writes each once: {@code form.grade={0}: grade} becomes {@code
 * result.wrist-flexion-grade=Wrist flexion: grade}.
 */
final class Words {
  private Words() {}

  static Labels complete(Labels written, List<Motion> catalogue) {
    TreeMap<String, Map<String, String>> all = new TreeMap<>();
    written.byLanguage().forEach((language, words) -> all.put(language, full(words, catalogue)));
    return new Labels(all);
  }

  private static Map<String, String> full(Map<String, String> written, List<Motion> catalogue) {
    TreeMap<String, String> words = new TreeMap<>(written);
    words.keySet().removeIf(key -> key.startsWith("form.") || key.startsWith("line."));
    for (Motion motion : catalogue) {
      String name = written.get("group." + motion.id());
      for (String item : Names.ITEMS) {
        if (!item.equals("reduced") || motion.criteria() == Criteria.GRAVITY) {
          String own =
              item.equals("range") && motion.criteria() == Criteria.RANGE_ONLY
                  ? "range-only"
                  : item;
          words.put("item." + motion.id() + "-" + item, written.get("form.item." + own));
        }
      }
      words.put("result." + motion.id() + "-grade", fill(written, "grade", name));
      words.put("result." + motion.id() + "-doubt", fill(written, "doubt", name));
      words.put("guide." + motion.id() + ".muscles", movers(written, motion));
    }
    for (Supply supply : Supply.all(catalogue)) {
      String name = written.get("line." + supply.id());
      words.put("sheet." + supply.id(), name);
      supply.results().forEach((kind, id) -> words.put("result." + id, fill(written, kind, name)));
    }
    return words;
  }

  private static String movers(Map<String, String> written, Motion motion) {
    ArrayList<String> movers = new ArrayList<>();
    for (Muscle muscle : motion.allMuscles()) {
      ArrayList<String> roots = new ArrayList<>();
      for (String root : muscle.roots()) {
        boolean main = muscle.mainRoots().contains(root);
        roots.add(main ? fill(written, "main-root", root) : root);
      }
      String status = written.get("form.status." + Codes.of(muscle.status()));
      movers.add(
          fill(
              written,
              "mover",
              muscle.name(),
              muscle.nerveName(),
              String.join(", ", roots),
              status));
    }
    return String.join("; ", movers) + ".";
  }

  private static String fill(Map<String, String> written, String form, String... args) {
    String text = written.get("form." + form);
    for (int i = 0; i < args.length; i++) {
      text = text.replace("{" + i + "}", args[i]);
    }
    return text;
  }
}
