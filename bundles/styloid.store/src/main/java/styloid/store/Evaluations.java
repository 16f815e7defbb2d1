package styloid.store;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import styloid.model.DefinitionText;
import styloid.model.Evaluation;
import styloid.model.EvaluationId;
import styloid.model.PatientId;
import styloid.model.TestId;
import styloid.model.TherapistId;

/** Statements on the heads of evaluations and the definitions they used. */
final class Evaluations {
  private final Sql sql;

  Evaluations(Sql sql) {
    this.sql = sql;
  }

  Optional<Evaluation> find(EvaluationId id) throws SQLException {
    Optional<Head> head = sql.one(Head::of, "SELECT * FROM evaluation WHERE id = ?", id);
    return head.isEmpty() ? Optional.empty() : Optional.of(whole(head.get()));
  }

  /** Oldest first; those of one day in the order of storing. */
  List<Evaluation> of(PatientId patient) throws SQLException {
    ArrayList<Evaluation> list = new ArrayList<>();
    String query =
        "SELECT * FROM evaluation WHERE patient = ? ORDER BY day, " + sql.dialect().storingOrder();
    for (Head head : sql.list(Head::of, query, patient)) {
      list.add(whole(head));
    }
    return list;
  }

  void insert(Evaluation evaluation, List<DefinitionText> definitions) throws SQLException {
    sql.update(
        "INSERT INTO evaluation (id, patient, day, therapist, state) VALUES (?, ?, ?, ?, ?)",
        evaluation.id(),
        evaluation.patient(),
        evaluation.date(),
        evaluation.therapist(),
        evaluation.state());
    for (Map.Entry<TestId, String> version : evaluation.versions().entrySet()) {
      version(evaluation.id(), version.getKey(), version.getValue());
    }
    for (Map.Entry<String, String> choice : evaluation.choices().entrySet()) {
      keep(evaluation.id(), choice.getKey(), choice.getValue());
    }
    for (DefinitionText definition : definitions) {
      attach(evaluation.id(), definition);
    }
  }

  private void keep(EvaluationId id, String key, String value) throws SQLException {
    sql.update(
        """
        INSERT INTO evaluation_choice (evaluation, key, value) VALUES (?, ?, ?)
        ON CONFLICT (evaluation, key) DO UPDATE SET value = excluded.value
        """,
        id,
        key,
        value);
  }

  /** Keeps a choice with the evaluation and as the one made last. */
  void choose(EvaluationId id, String key, String value) throws SQLException {
    keep(id, key, value);
    sql.update(
        """
        INSERT INTO last_choice (key, value) VALUES (?, ?)
        ON CONFLICT (key) DO UPDATE SET value = excluded.value
        """,
        key,
        value);
  }

  Map<String, String> lastChoices() throws SQLException {
    return choices("SELECT key, value FROM last_choice");
  }

  private Map<String, String> choices(String query, Object... args) throws SQLException {
    return sql.list(row -> Map.entry(row.text("key"), row.text("value")), query, args).stream()
        .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
  }

  private void version(EvaluationId id, TestId test, String version) throws SQLException {
    sql.update(
        """
        INSERT INTO evaluation_version (evaluation, test, version) VALUES (?, ?, ?)
        ON CONFLICT (evaluation, test) DO NOTHING
        """,
        id,
        test,
        version);
  }

  /** Adds a definition and its version, unless the evaluation has one of that test. */
  void add(EvaluationId id, DefinitionText definition) throws SQLException {
    boolean known = definitions(id).stream().anyMatch(d -> d.test().equals(definition.test()));
    if (!known) {
      attach(id, definition);
      version(id, definition.test(), definition.version());
    }
  }

  private void attach(EvaluationId id, DefinitionText definition) throws SQLException {
    String digest = digest(definition);
    sql.update(
        """
        INSERT INTO definition (test, version, text, digest) VALUES (?, ?, ?, ?)
        ON CONFLICT (digest) DO NOTHING
        """,
        definition.test(),
        definition.version(),
        definition.text(),
        digest);
    sql.update(
        """
        INSERT INTO evaluation_definition (evaluation, seq, definition)
        SELECT ?, (SELECT count(*) + 1 FROM evaluation_definition WHERE evaluation = ?), no
        FROM definition WHERE digest = ?
        """,
        id,
        id,
        digest);
  }

  List<DefinitionText> definitions(EvaluationId id) throws SQLException {
    return sql.list(
        row ->
            new DefinitionText(new TestId(row.text("test")), row.text("version"), row.text("text")),
        """
        SELECT d.test, d.version, d.text
        FROM evaluation_definition u JOIN definition d ON d.no = u.definition
        WHERE u.evaluation = ? ORDER BY u.seq
        """,
        id);
  }

  private Evaluation whole(Head head) throws SQLException {
    Map<TestId, String> versions =
        sql
            .list(
                row -> Map.entry(new TestId(row.text("test")), row.text("version")),
                "SELECT test, version FROM evaluation_version WHERE evaluation = ?",
                head.id())
            .stream()
            .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    return head.with(
        versions,
        choices("SELECT key, value FROM evaluation_choice WHERE evaluation = ?", head.id()));
  }

  /** Of test, version and text, each with its length before it. */
  private static String digest(DefinitionText definition) {
    try {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      for (String part :
          List.of(definition.test().value(), definition.version(), definition.text())) {
        sha.update((part.length() + ":").getBytes(StandardCharsets.US_ASCII));
        sha.update(part.getBytes(StandardCharsets.UTF_16BE));
      }
      return HexFormat.of().formatHex(sha.digest());
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  /** A row of the table of heads. */
  private record Head(Evaluation bare) {
    static Head of(Row row) throws SQLException {
      return new Head(
          new Evaluation(
              new EvaluationId(row.uuid("id")),
              new PatientId(row.uuid("patient")),
              row.date("day").orElseThrow(IllegalArgumentException::new),
              new TherapistId(row.text("therapist")),
              row.code(Evaluation.State.class, "state"),
              Map.of(),
              Map.of()));
    }

    EvaluationId id() {
      return bare.id();
    }

    Evaluation with(Map<TestId, String> versions, Map<String, String> choices) {
      return new Evaluation(
          bare.id(),
          bare.patient(),
          bare.date(),
          bare.therapist(),
          bare.state(),
          versions,
          choices);
    }
  }
}
