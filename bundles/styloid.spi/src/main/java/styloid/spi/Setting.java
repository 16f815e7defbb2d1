package styloid.spi;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import styloid.model.Choice;
import styloid.model.Condition;

/**
 * A clinic's choice a test's results, or what it asks, go by, such as a norm table. What was chosen
 * is part of the evaluation, under the key. Its words stand in the labels of the test under {@code
 * setting.<key>} and {@code setting.<key>.<code>}.
 *
 * @param key lower-case words with points and hyphens, beginning with the test's id and a point
 * @param codes what may be chosen, at least two
 * @param preset the one that holds while nothing is chosen
 */
public record Setting(String key, List<String> codes, String preset) {
  public Setting {
    codes = List.copyOf(codes);
    Objects.requireNonNull(preset, "preset");
    if (key == null || !key.matches("[a-z][a-z0-9-]*(\\.[a-z][a-z0-9-]*)+")) {
      throw new IllegalArgumentException("not a setting key: " + key);
    }
    codes.forEach(Choice::new);
    if (codes.size() < 2 || codes.stream().distinct().count() < codes.size()) {
      throw new IllegalArgumentException(key + ": two or more different codes are needed");
    }
    if (!codes.contains(preset)) {
      throw new IllegalArgumentException(key + ": the preset is none of the codes: " + preset);
    }
  }

  /** The code in force under these choices; empty when one is chosen that is not known here. */
  public Optional<String> in(Map<String, String> choices) {
    return Optional.of(choices.getOrDefault(key, preset)).filter(codes::contains);
  }

  /**
   * Holds while the setting stands at this code.
   *
   * @throws IllegalArgumentException when it is none of the codes
   */
  public Condition is(String code) {
    Condition.Chosen chosen = new Condition.Chosen(key, code, preset);
    if (!fits(chosen)) {
      throw new IllegalArgumentException(key + ": none of the codes: " + code);
    }
    return chosen;
  }

  /** Whether a condition speaks of this setting as it is. */
  boolean fits(Condition.Chosen chosen) {
    return chosen.setting().equals(key)
        && codes.contains(chosen.code())
        && chosen.preset().equals(preset);
  }

  /** Key of the label that names the setting. */
  public String labelKey() {
    return "setting." + key;
  }

  /** Key of the label that names one of its codes. */
  public String labelKey(String code) {
    return labelKey() + "." + code;
  }
}
