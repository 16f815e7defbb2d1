package styloid.store;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import styloid.model.Codes;
import styloid.model.Digit;
import styloid.model.Patient;
import styloid.model.PatientId;
import styloid.model.Precaution;
import styloid.model.Region;
import styloid.model.Side;

/** Statements on patients, their precautions and the caseload. */
final class Patients {
  private final Sql sql;

  Patients(Sql sql) {
    this.sql = sql;
  }

  Optional<Patient> find(PatientId id) throws SQLException {
    return sql.one(Patients::patient, "SELECT * FROM patient WHERE id = ?", id);
  }

  void save(Patient patient, List<Precaution> precautions) throws SQLException, StoreException {
    refuseNumberOfAnother(patient);
    sql.update(
        """
        INSERT INTO patient (id, record_number, name, birth_date, sex, dominance, involved,
          diagnosis, onset, surgery, height_cm, search)
        VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
        ON CONFLICT (id) DO UPDATE SET record_number = excluded.record_number,
          name = excluded.name, birth_date = excluded.birth_date, sex = excluded.sex,
          dominance = excluded.dominance, involved = excluded.involved,
          diagnosis = excluded.diagnosis, onset = excluded.onset, surgery = excluded.surgery,
          height_cm = excluded.height_cm, search = excluded.search
        """,
        patient.id(),
        patient.recordNumber(),
        patient.name(),
        patient.birthDate(),
        patient.sex(),
        patient.dominance(),
        patient.involved().stream().sorted().map(Side::code).collect(Collectors.joining(" ")),
        patient.diagnosis(),
        patient.onset(),
        patient.surgery(),
        patient.heightCm(),
        Search.text(patient));
    sql.update("DELETE FROM precaution WHERE patient = ?", patient.id());
    for (int i = 0; i < precautions.size(); i++) {
      insert(patient.id(), i + 1, precautions.get(i));
    }
  }

  private void refuseNumberOfAnother(Patient patient) throws SQLException, StoreException {
    Optional<Patient> other =
        sql.one(
            Patients::patient,
            "SELECT * FROM patient WHERE record_number = ? AND id <> ?",
            patient.recordNumber(),
            patient.id());
    if (other.isPresent()) {
      throw new StoreException(
          StoreException.Cause.CONFLICT,
          "Record number %s is that of another patient, %s. Nothing was stored. Check the number."
              .formatted(patient.recordNumber(), other.get().name()),
          null);
    }
  }

  private void insert(PatientId patient, int seq, Precaution precaution) throws SQLException {
    sql.update(
        """
        INSERT INTO precaution
          (patient, seq, kind, region, side, digit, from_day, until_day, set_by, note)
        VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
        """,
        patient,
        seq,
        precaution.kind(),
        precaution.region(),
        precaution.side(),
        precaution.digit(),
        precaution.from(),
        precaution.until(),
        precaution.setBy(),
        precaution.note());
  }

  List<Precaution> precautions(PatientId id) throws SQLException {
    return sql.list(
        Patients::precaution, "SELECT * FROM precaution WHERE patient = ? ORDER BY seq", id);
  }

  List<CaseloadRow> caseload(String search, int limit) throws SQLException {
    List<String> patterns = Search.patterns(search);
    ArrayList<Object> args = new ArrayList<>(patterns);
    args.add(limit);
    String where =
        patterns.stream()
            .map(p -> "p.search LIKE ? ESCAPE '\\'")
            .collect(Collectors.joining(" AND "));
    return sql.list(
        Patients::caseloadRow,
        """
        WITH found AS (
          SELECT p.id, p.search,
            (SELECT max(e.day) FROM evaluation e WHERE e.patient = p.id) AS last_visit
          FROM patient p %s
          ORDER BY last_visit DESC NULLS LAST, p.search, p.id
          LIMIT ?)
        SELECT p.*, f.last_visit,
          (SELECT count(*) FROM evaluation e WHERE e.patient = p.id) AS evaluations,
          (SELECT count(*) FROM evaluation e WHERE e.patient = p.id AND e.state = 'draft') AS drafts
        FROM found f JOIN patient p ON p.id = f.id
        ORDER BY f.last_visit DESC NULLS LAST, f.search, f.id
        """
            .formatted(where.isEmpty() ? "" : "WHERE " + where),
        args.toArray());
  }

  private static Patient patient(Row row) throws SQLException {
    return new Patient(
        new PatientId(row.uuid("id")),
        row.text("record_number"),
        row.text("name"),
        row.date("birth_date"),
        row.maybeCode(Patient.Sex.class, "sex"),
        row.maybeCode(Patient.Dominance.class, "dominance"),
        sides(row.text("involved")),
        row.text("diagnosis"),
        row.date("onset"),
        row.date("surgery"),
        row.decimal("height_cm"));
  }

  private static Set<Side> sides(String codes) {
    EnumSet<Side> sides = EnumSet.noneOf(Side.class);
    for (String code : codes.split(" ")) {
      if (!code.isEmpty()) {
        sides.add(Codes.parse(Side.class, code));
      }
    }
    return sides;
  }

  /** A precaution from the columns every table of them has. */
  static Precaution precaution(Row row) throws SQLException {
    return new Precaution(
        row.code(Precaution.Kind.class, "kind"),
        row.code(Region.class, "region"),
        row.code(Side.class, "side"),
        row.code(Digit.class, "digit"),
        row.date("from_day"),
        row.date("until_day"),
        row.text("set_by"),
        row.text("note"));
  }

  private static CaseloadRow caseloadRow(Row row) throws SQLException {
    return new CaseloadRow(
        patient(row), row.number("evaluations"), row.date("last_visit"), row.number("drafts"));
  }
}
