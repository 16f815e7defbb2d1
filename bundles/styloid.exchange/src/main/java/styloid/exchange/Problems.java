package styloid.exchange;

import java.util.ArrayList;
import java.util.List;

/** The first problems of a file; the rest are only counted. */
final class Problems {
  /** Most problems listed. */
  static final int MOST = 50;

  private final ArrayList<FileProblem> list = new ArrayList<>();
  private int count;

  void add(Where where, String reason) {
    count++;
    if (list.size() < MOST) {
      list.add(where.problem(reason));
    }
  }

  int count() {
    return count;
  }

  List<FileProblem> list() {
    ArrayList<FileProblem> all = new ArrayList<>(list);
    if (count > MOST) {
      all.add(new FileProblem(0, 0, "$", (count - MOST) + " more; put these right first"));
    }
    return List.copyOf(all);
  }
}
