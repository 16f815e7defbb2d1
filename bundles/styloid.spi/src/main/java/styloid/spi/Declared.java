package styloid.spi;

import java.util.AbstractList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.RandomAccess;
import styloid.model.ResultId;

/**
 * The results a test gives as an unmodifiable list, equal to any list of the same, that finds one
 * by its id at once.
 */
final class Declared extends AbstractList<ResultDefinition> implements RandomAccess {
  private final List<ResultDefinition> results;
  private final Map<ResultId, ResultDefinition> byId = new HashMap<>();

  private Declared(List<ResultDefinition> given) {
    results = List.copyOf(given);
    results.forEach(result -> byId.putIfAbsent(result.id(), result));
  }

  /** These results; the same object when they are indexed already. */
  static Declared of(List<ResultDefinition> results) {
    return results instanceof Declared indexed ? indexed : new Declared(results);
  }

  @Override
  public ResultDefinition get(int index) {
    return results.get(index);
  }

  @Override
  public int size() {
    return results.size();
  }

  Optional<ResultDefinition> result(ResultId which) {
    return Optional.ofNullable(byId.get(which));
  }
}
