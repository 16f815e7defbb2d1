package styloid.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import styloid.model.ItemKind;

/**
 * The keys that choose among listed answers. Answers that are numbers themselves, such as grades,
 * are typed as they are; others by their place, from 1.
 */
final class ChoiceKeys {
  private final List<String> codes;
  private final List<String> keys;

  private ChoiceKeys(List<String> codes, List<String> keys) {
    this.codes = codes;
    this.keys = keys;
  }

  static ChoiceKeys of(ItemKind.Choices choices) {
    boolean numbers = choices.codes().stream().allMatch(c -> c.matches("\\d{1,2}[+-]?"));
    ArrayList<String> keys = new ArrayList<>();
    for (int place = 1; place <= choices.codes().size(); place++) {
      keys.add(numbers ? choices.codes().get(place - 1) : Integer.toString(place));
    }
    return new ChoiceKeys(choices.codes(), List.copyOf(keys));
  }

  /** What to press for each answer, in the order of the answers. */
  List<String> keys() {
    return keys;
  }

  /** The code of the answer these keys choose, if any. */
  Optional<String> code(String typed) {
    int place = keys.indexOf(typed);
    return place < 0 ? Optional.empty() : Optional.of(codes.get(place));
  }

  /** Whether more keys could still follow, as the 1 of 10 or the 3 of 3+. */
  boolean canGrow(String typed) {
    return keys.stream().anyMatch(k -> k.length() > typed.length() && k.startsWith(typed));
  }

  /** Whether the keys begin some answer. */
  boolean begins(String typed) {
    return keys.stream().anyMatch(k -> k.startsWith(typed));
  }
}
