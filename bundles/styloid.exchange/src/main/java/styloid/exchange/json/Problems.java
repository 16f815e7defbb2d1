package styloid.exchange.json;

import java.util.ArrayList;
import java.util.List;
import styloid.model.FileProblem;

/** The first problems of a file; the rest are only counted. */
public final class Problems {
  /** Most problems listed. */
  public static final int MOST = 50;

  private final ArrayList<FileProblem> list = new ArrayList<>();
  private int count;

  public void add(Where where, String reason) {
    count++;
    if (list.size() < MOST) {
      list.add(where.problem(reason));
    }
  }

  public int count() {
    return count;
  }

  public List<FileProblem> list() {
    ArrayList<FileProblem> all = new ArrayList<>(list);
    if (count > MOST) {
      all.add(new FileProblem(0, 0, "$", (count - MOST) + " more; put these right first"));
    }
    return List.copyOf(all);
  }
}
