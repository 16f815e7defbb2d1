package styloid.session;

import java.util.ArrayDeque;
import java.util.Optional;
import styloid.model.Entry;
import styloid.model.ItemKey;
import styloid.model.Value;

/** What was recorded in this sitting, to be taken back and brought again. */
final class UndoStack {
  /** A key's value before and after one recording, each with whether it was confirmed. */
  record Step(
      ItemKey key,
      Optional<Value> before,
      boolean beforeConfirmed,
      Optional<Value> after,
      boolean afterConfirmed) {}

  private final ArrayDeque<Step> done = new ArrayDeque<>();
  private final ArrayDeque<Step> undone = new ArrayDeque<>();

  void recorded(Optional<Entry> before, Entry after) {
    done.push(
        new Step(
            after.key(),
            before.flatMap(Entry::value),
            before.map(Entry::confirmed).orElse(false),
            after.value(),
            after.confirmed()));
    undone.clear();
  }

  Optional<Step> undo() {
    Step step = done.poll();
    if (step != null) {
      undone.push(step);
    }
    return Optional.ofNullable(step);
  }

  Optional<Step> redo() {
    Step step = undone.poll();
    if (step != null) {
      done.push(step);
    }
    return Optional.ofNullable(step);
  }

  boolean canUndo() {
    return !done.isEmpty();
  }

  boolean canRedo() {
    return !undone.isEmpty();
  }
}
