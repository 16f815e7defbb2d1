package styloid.session;

import java.util.ArrayDeque;
import java.util.Optional;
import java.util.function.Predicate;
import styloid.model.Entry;
import styloid.model.InSpite;
import styloid.model.ItemKey;
import styloid.model.Value;

/** What was recorded in this sitting, to be taken back and brought again. */
final class UndoStack {
  /** What an entry says of its key. */
  record Content(Optional<Value> value, boolean confirmed, Optional<InSpite> override) {
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

  /** The latest step, unless what stood before it may not be recorded again. */
  Optional<Step> undo(Predicate<Content> may) {
    Optional<Step> step = Optional.ofNullable(done.peek()).filter(s -> may.test(s.before()));
    step.ifPresent(s -> undone.push(done.pop()));
    return step;
  }

  /** The step taken back last, unless what it recorded may not be recorded again. */
  Optional<Step> redo(Predicate<Content> may) {
    Optional<Step> step = Optional.ofNullable(undone.peek()).filter(s -> may.test(s.after()));
    step.ifPresent(s -> done.push(undone.pop()));
    return step;
  }

  boolean canUndo() {
    return !done.isEmpty();
  }

  boolean canRedo() {
    return !undone.isEmpty();
  }
}
