package styloid.screen;

import java.util.Map;
import java.util.TreeMap;
import styloid.spi.Labels;

/**
 * Gives every item and result its words from the name of its motion or area, so that a translator
 * writes each name once: {@code form.pain={0}: pain} becomes {@code item.elbow-flexion-pain=Elbow
 * flexion: pain}.
 */
final class Words {
  private Words() {}

  static Labels complete(Labels written) {
    TreeMap<String, Map<String, String>> all = new TreeMap<>();
    written.byLanguage().forEach((language, words) -> all.put(language, complete(words)));
    return new Labels(all);
  }

  private static Map<String, String> complete(Map<String, String> written) {
    TreeMap<String, String> words = new TreeMap<>(written);
    words.keySet().removeIf(key -> key.startsWith("form."));
    for (Area area : Area.all()) {
      String areaName = written.get("group." + area.id());
      for (String count : new String[] {"not-full", "painful"}) {
        words.put("result." + area.id() + "-" + count, fill(written, count, areaName));
      }
      for (String motion : area.motions()) {
        String name = written.get("item." + motion);
        for (String part : new String[] {"pain", "pain-site", "quality", "decision"}) {
          words.put("item." + motion + "-" + part, fill(written, part, name));
        }
        words.put("result." + motion + "-next", fill(written, "next", name));
      }
    }
    return words;
  }

  private static String fill(Map<String, String> written, String form, String name) {
    return written.get("form." + form).replace("{0}", name);
  }
}
