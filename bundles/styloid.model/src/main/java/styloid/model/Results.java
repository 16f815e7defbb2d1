package styloid.model;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Results by key, in the order their modules gave them; those of one test stand together, tests in
 * the order they were added.
 */
public final class Results {
  private static final Results EMPTY = new Results(Map.of());

  /** One test's results; shared between the values that hold them. */
  private record Part(List<Result> inOrder, Map<ResultKey, Result> byKey) {
    static Part of(List<Result> results) {
      HashMap<ResultKey, Result> byKey = new HashMap<>(results.size() * 2);
      for (Result result : results) {
        if (byKey.put(result.key(), result) != null) {
          throw new IllegalArgumentException("result given twice: " + result.key());
        }
      }
      return new Part(List.copyOf(results), byKey);
    }

    Part and(List<Result> more) {
      ArrayList<Result> all = new ArrayList<>(inOrder);
      all.addAll(more);
      return of(all);
    }
  }

  private final Map<TestId, Part> parts;

  private Results(Map<TestId, Part> parts) {
    this.parts = parts;
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

  /**
   * These results and more.
   *
   * @throws IllegalArgumentException when two share a key
   */
  public Results and(List<Result> more) {
    LinkedHashMap<TestId, List<Result>> byTest = new LinkedHashMap<>();
    TestId before = null;
    List<Result> own = List.of();
    for (Result result : more) {
      TestId test = result.key().test();
      if (test != before) {
        own = byTest.computeIfAbsent(test, t -> new ArrayList<>());
        before = test;
      }
      own.add(result);
    }
    LinkedHashMap<TestId, Part> all = new LinkedHashMap<>(parts);
    byTest.forEach(
        (test, results) -> {
          Part there = all.get(test);
          all.put(test, there == null ? Part.of(results) : there.and(results));
        });
    return new Results(all);
  }

  /**
   * These results and those.
   *
   * @throws IllegalArgumentException when two share a key
   */
  public Results and(Results more) {
    LinkedHashMap<TestId, Part> all = new LinkedHashMap<>(parts);
    more.parts.forEach((test, part) -> all.merge(test, part, (a, b) -> a.and(b.inOrder)));
    return new Results(all);
  }

  /** Only the results of these tests. */
  public Results ofTests(Set<TestId> tests) {
    LinkedHashMap<TestId, Part> kept = new LinkedHashMap<>(parts);
    kept.keySet().retainAll(tests);
    return new Results(kept);
  }

  public Optional<Result> result(ResultKey key) {
    Part part = parts.get(key.test());
    return part == null ? Optional.empty() : Optional.ofNullable(part.byKey.get(key));
  }

  /** The results of one test, in its order. */
  public List<Result> of(TestId test) {
    Part part = parts.get(test);
    return part == null ? List.of() : part.inOrder;
  }

  /**
   * Whether both hold the very same results in the same order. Never true of two that differ;
   * results that are merely equal do not count as the same.
   */
  public boolean sameAs(Results other) {
    if (!List.copyOf(parts.keySet()).equals(List.copyOf(other.parts.keySet()))) {
      return false;
    }
    return parts.keySet().stream().allMatch(test -> parts.get(test) == other.parts.get(test));
  }

  /** All results, test after test. */
  public Collection<Result> all() {
    ArrayList<Result> all = new ArrayList<>();
    parts.values().forEach(part -> all.addAll(part.inOrder));
    return Collections.unmodifiableList(all);
  }
}
