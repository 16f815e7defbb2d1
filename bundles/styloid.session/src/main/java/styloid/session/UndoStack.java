package styloid.session;

import java.util.ArrayDeque;
import java.util.Optional;
import styloid.model.Entry;
import styloid.model.ItemKey;
import styloid.model.Value;

/** What was recorded in this sitting, to be taken back and brought again. */
final class UndoStack {
  /** What an entry says of its key. */
  record Content(Optional<Value> value, boolean confirmed, Optional<String> override) {
    private static final Content NOTHING = new Content(Optional.empty(), false, Optional.empty());

    static Content of(Entry entry) {
      return new Content(entry.value(), entry.confirmed(), entry.override());
    }
  }

  /** What stood at a key before and after one recording. */
  record Step(ItemKey key, Content before, Content after) {}

  private final ArrayDeque<Step> done = new ArrayDeque<>();
  private final ArrayDeque<Step> undone = new ArrayDeque<>();

  void recorded(Optional<Entry> before, Entry after) {
    done.push(
        new Step(after.key(), before.map(Content::of).orElse(Content.NOTHING), Content.of(after)));
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
