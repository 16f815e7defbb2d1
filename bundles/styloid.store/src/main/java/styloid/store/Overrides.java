package styloid.store;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import styloid.model.EntryId;
import styloid.model.EvaluationId;
import styloid.model.Precaution;

/** Statements on the precautions that entries overrode. */
final class Overrides {
  private final Sql sql;

  Overrides(Sql sql) {
    this.sql = sql;
  }

  private record Line(UUID entry, Precaution precaution) {
    static Line of(Row row) throws SQLException {
      return new Line(row.uuid("entry"), Patients.precaution(row));
    }
  }

  /** By entry, in the order they were kept; an entry that overrode none is missing. */
  Map<UUID, List<Precaution>> of(EvaluationId id) throws SQLException {
    return gathered(
        sql.list(
            Line::of,
            """
            SELECT o.* FROM overridden o JOIN entry e ON e.id = o.entry
            WHERE e.evaluation = ? AND e.override_reason IS NOT NULL ORDER BY e.seq, o.seq
            """,
            id));
  }

  Map<UUID, List<Precaution>> of(EntryId entry) throws SQLException {
    return gathered(
        sql.list(Line::of, "SELECT * FROM overridden WHERE entry = ? ORDER BY seq", entry));
  }

  private static Map<UUID, List<Precaution>> gathered(List<Line> lines) {
    HashMap<UUID, List<Precaution>> gathered = new HashMap<>();
    for (Line line : lines) {
      gathered.computeIfAbsent(line.entry(), k -> new ArrayList<>()).add(line.precaution());
    }
    return gathered;
  }

  void insert(EntryId entry, List<Precaution> precautions) throws SQLException {
    for (int i = 0; i < precautions.size(); i++) {
      Precaution precaution = precautions.get(i);
      sql.update(
          """
          INSERT INTO overridden
            (entry, seq, kind, region, side, digit, from_day, until_day, set_by, note)
          VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
          """,
          entry,
          i + 1,
          precaution.kind(),
          precaution.region(),
          precaution.side(),
          precaution.digit(),
          precaution.from(),
          precaution.until(),
          precaution.setBy(),
          precaution.note());
    }
  }
}
