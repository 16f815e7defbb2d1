package styloid.grading;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import styloid.model.ItemId;
import styloid.model.ResultId;

/**
 * Ids of a motion's items and results, made once: they are asked for at every key press.
 *
 * @param items by what they record, such as {@code range}
 * @param results {@code grade} and {@code doubt}
 * @param measured {@code active} and {@code passive} of goniometry; empty where it has no such
 *     motion
 */
record Names(
    Map<String, ItemId> items, Map<String, ResultId> results, Map<String, ItemId> measured) {
  static final List<String> ITEMS =
      List.of(
          "range",
          "hold",
          "hold-time",
          "reduced",
          "contraction",
          "pain",
          "substitution",
          "note",
          "typed");

  static Names of(String motion, Optional<String> goniometry) {
    LinkedHashMap<String, ItemId> items = new LinkedHashMap<>();
    ITEMS.forEach(what -> items.put(what, new ItemId(motion + "-" + what)));
    LinkedHashMap<String, ResultId> results = new LinkedHashMap<>();
    List.of("grade", "doubt").forEach(r -> results.put(r, new ResultId(motion + "-" + r)));
    LinkedHashMap<String, ItemId> measured = new LinkedHashMap<>();
    goniometry.ifPresent(
        begin ->
            List.of("active", "passive")
                .forEach(how -> measured.put(how, new ItemId(begin + "-" + how))));
    return new Names(items, results, measured);
  }
}
