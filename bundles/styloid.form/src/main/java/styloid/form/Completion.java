package styloid.form;

import java.util.List;
import styloid.model.Codes;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.spi.Group;

/**
 * How far a group, or several, have come. Counted are the keys asked now that are not optional; a
 * key withheld by a precaution is not waited for.
 *
 * @param done keys with an entry, an absence included
 * @param open keys still to be done
 * @param withheld keys a precaution forbids that have no entry
 */
public record Completion(int done, int open, int withheld) {
  /** In one word; drawn as a shape beside it. */
  public enum Stage {
    UNTOUCHED,
    IN_PROGRESS,
    DONE,
    WITHHELD;

    public String code() {
      return Codes.of(this);
    }
  }

  /** How far these groups have come together. */
  public static Completion of(FormState state, List<Group> groups) {
    int done = 0;
    int open = 0;
    int withheld = 0;
    for (Group group : groups) {
      for (Item item : group.items()) {
        for (ItemKey key : item.keys(state.test().id())) {
          if (state.value(key).isPresent()) {
            done++;
          } else if (!item.optional() && state.asked(item, key)) {
            if (state.withheldBy(group, item, key).isEmpty()) {
              open++;
            } else {
              withheld++;
            }
          }
        }
      }
    }
    return new Completion(done, open, withheld);
  }

  public Stage stage() {
    if (done == 0 && open == 0 && withheld > 0) {
      return Stage.WITHHELD;
    } else if (done == 0) {
      return Stage.UNTOUCHED;
    }
    return open == 0 ? Stage.DONE : Stage.IN_PROGRESS;
  }
}
