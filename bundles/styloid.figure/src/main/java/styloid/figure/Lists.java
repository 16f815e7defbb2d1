package styloid.figure;

import java.util.ArrayList;
import java.util.List;

/** Lists put together. */
final class Lists {
  private Lists() {}

  static <T> List<T> joined(List<T> first, List<T> second) {
    ArrayList<T> all = new ArrayList<>(first);
    all.addAll(second);
    return all;
  }
}
