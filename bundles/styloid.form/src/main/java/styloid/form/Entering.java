package styloid.form;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import styloid.model.Absence;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.Message;
import styloid.model.Unit;
import styloid.model.Value;
import styloid.spi.EntryCheck;
import styloid.spi.Texts;

/** One field's way from text to entry: what is typed, asked, refused or left. Knows no window. */
final class Entering {
  /** What the field waits for. */
  enum Mode {
    TEXT,
    /** An unusual value waits to be kept or gone back on. */
    QUESTION,
    /** The reason of an absence is to be chosen. */
    REASON,
    /** The text cannot be recorded; it stays. */
    REFUSED
  }

  /** Where entry goes after a key. */
  enum Then {
    STAY,
    NEXT
  }

  private final ItemKey key;
  private final Item item;
  private final FormPort port;
  private final Locale locale;
  private Mode mode = Mode.TEXT;
  private String text = "";
  private boolean dirty;
  private final Set<Value> asked = new HashSet<>();
  private Optional<Value> pending = Optional.empty();
  private Optional<Message> message = Optional.empty();
  private Optional<String> reason = Optional.empty();
  private Function<Value, Optional<Message>> doubts = value -> Optional.empty();

  Entering(ItemKey key, Item item, FormPort port, Locale locale) {
    this.key = Objects.requireNonNull(key, "key");
    this.item = Objects.requireNonNull(item, "item");
    this.port = port;
    this.locale = locale;
  }

  /** What else to ask about a value that could be recorded as it is. */
  void asking(Function<Value, Optional<Message>> question) {
    doubts = question;
  }

  Mode mode() {
    return mode;
  }

  /** The question or the refusal. */
  Optional<Message> message() {
    return message;
  }

  String text() {
    return text;
  }

  /** Whether text is under way that is not the recorded value. */
  boolean dirty() {
    return dirty;
  }

  /** Whether nothing is under way: no text, no question. */
  boolean idle() {
    return mode == Mode.TEXT && !dirty;
  }

  /** Text kept from before a stop; it is under way again. */
  void resume(String draft) {
    text = draft;
    dirty = !draft.isBlank();
    mode = Mode.TEXT;
  }

  /** Why what is recorded from now on is done although a precaution withholds it. */
  void inSpite(String why) {
    reason = Optional.of(why);
  }

  /** The reason given, if any. */
  Optional<String> reason() {
    return reason;
  }

  /** The text was changed by hand. */
  void type(String typed) {
    text = typed;
    dirty = true;
    toText();
    port.draft(key, typed);
  }

  /** Enter: keeps what is asked about, or commits the text. */
  Then enter(Unit unit) {
    if (mode == Mode.QUESTION) {
      return record(pending.orElseThrow(), true);
    } else if (mode == Mode.REASON) {
      return Then.STAY;
    }
    return dirty ? commit(unit, true) : Then.NEXT;
  }

  /** The field loses the focus: what was typed is committed, what is asked stays asked. */
  void leave(Unit unit) {
    if (mode == Mode.REASON) {
      toText();
    }
    if (!dirty || mode != Mode.TEXT) {
      return;
    }
    if (text.isBlank()) {
      revert();
    } else {
      commit(unit, false);
    }
  }

  /**
   * Records the text, or asks or refuses.
   *
   * @param keeps whether a value asked about before is kept now that it is given again
   */
  private Then commit(Unit unit, boolean keeps) {
    EntryCheck.Checked checked = EntryCheck.parse(text, item, unit, locale);
    Optional<Message> doubt = checked.value().flatMap(doubts);
    if (checked.accepted() && doubt.isEmpty()) {
      return record(checked.value().orElseThrow(), false);
    }
    if (keeps && checked.value().filter(asked::contains).isPresent()) {
      return record(checked.value().get(), true);
    }
    pending = checked.value();
    pending.ifPresent(asked::add);
    message = both(checked.problem().map(p -> p.text()), doubt);
    mode = pending.isPresent() ? Mode.QUESTION : Mode.REFUSED;
    return Then.STAY;
  }

  /** One question where two things are to be asked. */
  static Optional<Message> both(Optional<Message> one, Optional<Message> other) {
    return one.isPresent() && other.isPresent()
        ? Optional.of(Message.of(Texts.COMMON, "check.and", one.get(), other.get()))
        : one.or(() -> other);
  }

  /** A whole value was chosen with a single key or click. */
  Then choose(Value value) {
    EntryCheck.Checked checked = EntryCheck.check(item, value);
    if (checked.accepted()) {
      return record(value, false);
    }
    message = checked.problem().map(p -> p.text());
    mode = Mode.REFUSED;
    return Then.STAY;
  }

  /** The absence key: asks for the reason, or closes that question again. */
  void absence() {
    boolean closing = mode == Mode.REASON;
    toText();
    mode = closing ? Mode.TEXT : Mode.REASON;
  }

  /** Records that there is no value, and why. */
  Then absent(Absence.Reason reason) {
    return record(new Absence(reason), false);
  }

  /** The reason with this number, from 1; another number stays. */
  Then reason(int place) {
    List<Absence.Reason> reasons = List.of(Absence.Reason.values());
    return place < 1 || place > reasons.size() ? Then.STAY : absent(reasons.get(place - 1));
  }

  /** Goes back: from a question to the text, from text to what is recorded. */
  void escape() {
    if (mode == Mode.TEXT && dirty) {
      revert();
    } else {
      toText();
    }
  }

  /** Drops the text under way; what is recorded stands. */
  void revert() {
    if (dirty) {
      port.draft(key, "");
    }
    dirty = false;
    text = "";
    toText();
  }

  private void toText() {
    mode = Mode.TEXT;
    pending = Optional.empty();
    message = Optional.empty();
  }

  private Then record(Value value, boolean confirmed) {
    dirty = false;
    text = "";
    toText();
    if (reason.isPresent() && port.mayOverride() && !(value instanceof Absence)) {
      port.recordInSpite(key, value, confirmed, reason.get());
    } else {
      port.record(key, value, confirmed);
    }
    return Then.NEXT;
  }
}
