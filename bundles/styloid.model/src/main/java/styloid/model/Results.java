package styloid.model;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Results by key, in the order their modules gave them. */
public final class Results {
  private static final Results EMPTY = new Results(Map.of());
  private final Map<ResultKey, Result> byKey;

  private Results(Map<ResultKey, Result> byKey) {
    this.byKey = byKey;
  }

  public static Results empty() {
    return EMPTY;
  }

  /**
   * These results.
   *
   * @throws IllegalArgumentException when two share a key
   */
  public static Results of(List<Result> results) {
    return EMPTY.and(results);
  }

  /** These results and more. */
  public Results and(List<Result> more) {
    LinkedHashMap<ResultKey, Result> all = new LinkedHashMap<>(byKey);
    for (Result result : more) {
      if (all.put(result.key(), result) != null) {
        throw new IllegalArgumentException("result given twice: " + result.key());
      }
    }
    return new Results(all);
  }

  /** Only the results of these tests. */
  public Results ofTests(Set<TestId> tests) {
    LinkedHashMap<ResultKey, Result> kept = new LinkedHashMap<>();
    byKey.forEach(
        (key, result) -> {
          if (tests.contains(key.test())) {
            kept.put(key, result);
          }
        });
    return new Results(kept);
  }

  public Optional<Result> result(ResultKey key) {
    return Optional.ofNullable(byKey.get(key));
  }

  /** The results of one test, in its order. */
  public List<Result> of(TestId test) {
    ArrayList<Result> found = new ArrayList<>();
    for (Result result : byKey.values()) {
      if (result.key().test().equals(test)) {
        found.add(result);
      }
    }
    return found;
  }

  public Collection<Result> all() {
    return Collections.unmodifiableCollection(byKey.values());
  }
}
