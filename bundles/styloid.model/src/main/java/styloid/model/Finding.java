package styloid.model;

import java.util.List;
import java.util.Objects;

/**
 * A statement drawn across tests for the therapist's judgement, with what it rests on.
 *
 * @param rule stable name of the rule, also its page in docs/rules
 */
public record Finding(
    String rule, Message text, Side side, List<ItemKey> entries, List<ResultKey> results) {
  public Finding {
    Codes.slug("rule", rule);
    Objects.requireNonNull(text, "text");
    Objects.requireNonNull(side, "side");
    entries = List.copyOf(entries);
    results = List.copyOf(results);
    if (entries.isEmpty() && results.isEmpty()) {
      throw new IllegalArgumentException("a finding must rest on something");
    }
  }
}
