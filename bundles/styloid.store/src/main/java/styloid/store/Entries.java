package styloid.store;

import java.math.BigDecimal;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import styloid.model.Absence;
import styloid.model.Choice;
import styloid.model.Codes;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.EntryId;
import styloid.model.EvaluationId;
import styloid.model.InSpite;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.Precaution;
import styloid.model.Quantity;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.model.Text;
import styloid.model.TherapistId;
import styloid.model.Unit;
import styloid.model.Value;

/** Statements on the ledgers of evaluations and the text under way in fields. */
final class Entries {
  private final Sql sql;
  private final Overrides overrides;

  Entries(Sql sql) {
    this.sql = sql;
    this.overrides = new Overrides(sql);
  }

  /** A value as its three columns. */
  private record Columns(String kind, String value, String detail) {
    static final Columns WITHDRAWN = new Columns("withdrawn", null, null);

    static Columns of(Value value) {
      return value.match(
          q -> new Columns("quantity", q.amount().toString(), q.unit().ucum()),
          c -> new Columns("choice", c.code(), null),
          t -> new Columns("text", t.text(), null),
          a -> new Columns("absence", a.reason().code(), a.note()));
    }

    Optional<Value> read() {
      return switch (kind) {
        case "quantity" -> Optional.of(new Quantity(new BigDecimal(value), Unit.ofUcum(detail)));
        case "choice" -> Optional.of(new Choice(value));
        case "text" -> Optional.of(new Text(value));
        case "absence" ->
            Optional.of(new Absence(Codes.parse(Absence.Reason.class, value), detail));
        default -> Optional.empty();
      };
    }
  }

  /** In the order of appending. */
  List<Entry> of(EvaluationId id) throws SQLException {
    Map<UUID, List<Precaution>> overridden = overrides.of(id);
    return sql.list(
        row -> entry(row, overridden), "SELECT * FROM entry WHERE evaluation = ? ORDER BY seq", id);
  }

  /** Appends those not there yet and drops the drafts of all their keys. */
  void append(EvaluationId id, List<Entry> entries) throws SQLException, StoreException {
    boolean drafts = hasDrafts(id);
    for (Entry entry : entries) {
      if (!isThere(id, entry)) {
        insert(id, entry);
      }
      if (drafts) {
        drop(id, entry.key());
      }
    }
  }

  private boolean hasDrafts(EvaluationId id) throws SQLException {
    return sql.one(row -> id, "SELECT 1 FROM draft WHERE evaluation = ? LIMIT 1", id).isPresent();
  }

  private boolean isThere(EvaluationId id, Entry entry) throws SQLException, StoreException {
    Optional<String> holder =
        sql.one(
            row -> row.text("evaluation"), "SELECT evaluation FROM entry WHERE id = ?", entry.id());
    if (holder.isPresent() && !isSame(id, entry, holder.get())) {
      throw new StoreException(
          StoreException.Cause.CONFLICT,
          "Entry %s (%s) is stored already with other content. Nothing was changed. An entry is"
                  .formatted(entry.id(), entry.key())
              + " never altered: record a new one instead, with an id or time of its own.",
          null);
    }
    return holder.isPresent();
  }

  private boolean isSame(EvaluationId id, Entry entry, String holder) throws SQLException {
    Map<UUID, List<Precaution>> overridden = overrides.of(entry.id());
    Optional<Entry> stored =
        sql.one(row -> entry(row, overridden), "SELECT * FROM entry WHERE id = ?", entry.id());
    return holder.equals(id.toString()) && stored.equals(Optional.of(entry));
  }

  private void insert(EvaluationId id, Entry entry) throws SQLException {
    Columns columns = entry.value().map(Columns::of).orElse(Columns.WITHDRAWN);
    ItemKey key = entry.key();
    sql.update(
        """
        INSERT INTO entry (id, evaluation, seq, test, item, side, digit, trial, kind, value,
          detail, entered_at, entered_by, confirmed, override_reason)
        VALUES (?, ?, (SELECT coalesce(max(seq), 0) + 1 FROM entry WHERE evaluation = ?),
          ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
        """,
        entry.id(),
        id,
        id,
        key.test(),
        key.item(),
        key.side(),
        key.digit(),
        key.trial(),
        columns.kind(),
        columns.value(),
        columns.detail(),
        entry.at(),
        entry.by(),
        entry.confirmed(),
        entry.override().map(InSpite::reason));
    if (entry.override().isPresent()) {
      overrides.insert(entry.id(), entry.override().get().precautions());
    }
  }

  void draft(EvaluationId id, ItemKey key, String text) throws SQLException {
    drop(id, key);
    if (!text.isBlank()) {
      insertDraft(id, key, text);
    }
  }

  /** As it is, even blank. */
  void insertDraft(EvaluationId id, ItemKey key, String text) throws SQLException {
    sql.update(
        """
        INSERT INTO draft (evaluation, test, item, side, digit, trial, text)
        VALUES (?, ?, ?, ?, ?, ?, ?)
        """,
        id,
        key.test(),
        key.item(),
        key.side(),
        key.digit(),
        key.trial(),
        text);
  }

  private void drop(EvaluationId id, ItemKey key) throws SQLException {
    sql.update(
        """
        DELETE FROM draft WHERE evaluation = ?
          AND test = ? AND item = ? AND side = ? AND digit = ? AND trial = ?
        """,
        id,
        key.test(),
        key.item(),
        key.side(),
        key.digit(),
        key.trial());
  }

  Map<ItemKey, String> drafts(EvaluationId id) throws SQLException {
    HashMap<ItemKey, String> drafts = new HashMap<>();
    sql.list(
            row -> Map.entry(key(row), row.text("text")),
            "SELECT * FROM draft WHERE evaluation = ?",
            id)
        .forEach(draft -> drafts.put(draft.getKey(), draft.getValue()));
    return drafts;
  }

  private static Entry entry(Row row, Map<UUID, List<Precaution>> overridden) throws SQLException {
    UUID id = row.uuid("id");
    return new Entry(
        new EntryId(id),
        key(row),
        new Columns(row.text("kind"), row.text("value"), row.text("detail")).read(),
        row.instant("entered_at"),
        new TherapistId(row.text("entered_by")),
        row.truth("confirmed"),
        Optional.ofNullable(row.text("override_reason"))
            .map(reason -> new InSpite(reason, overridden.getOrDefault(id, List.of()))));
  }

  private static ItemKey key(Row row) throws SQLException {
    return new ItemKey(
        new TestId(row.text("test")),
        new ItemId(row.text("item")),
        row.code(Side.class, "side"),
        row.code(Digit.class, "digit"),
        row.number("trial"));
  }
}
