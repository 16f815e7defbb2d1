package styloid.store;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Deactivate;
import org.osgi.service.component.annotations.Reference;
import styloid.model.DefinitionText;
import styloid.model.Entry;
import styloid.model.Evaluation;
import styloid.model.EvaluationId;
import styloid.model.EvaluationRecord;
import styloid.model.ItemKey;
import styloid.model.Ledger;
import styloid.model.Patient;
import styloid.model.PatientId;
import styloid.model.PatientRecord;
import styloid.model.Precaution;

/**
 * The records of one machine, in one file in the user's data folder, or those a clinic shares, on
 * the server which {@code server.properties} in that folder names.
 */
@Component(service = PatientStore.class)
public final class SqlStore implements PatientStore {
  private final Choice choice;
  private volatile Database chosen;

  /** Which database it is; asked once, when the store is opened. */
  private interface Choice {
    Database take() throws StoreException;
  }

  /** A store for a folder, which is created when the store is opened. */
  @Activate
  public SqlStore(@Reference(target = "(styloid.role=data)") Path dataFolder) {
    choice = () -> chosen(dataFolder);
  }

  SqlStore(Database database) {
    choice = () -> database;
  }

  private static Database chosen(Path dataFolder) throws StoreException {
    Optional<Server> server = Server.of(dataFolder);
    return server.isPresent()
        ? new ServerDatabase(server.get(), Migrations.server())
        : new EmbeddedDatabase(dataFolder, Migrations.embedded());
  }

  Database database() throws StoreException {
    if (chosen == null) {
      throw new StoreException(
          StoreException.Cause.OTHER, "The records are not open. Open them first.", null);
    }
    return chosen;
  }

  @Override
  public synchronized void open() throws StoreException {
    if (chosen == null) {
      chosen = choice.take();
    }
    chosen.open();
  }

  @Override
  public List<CaseloadRow> caseload(String search, int limit) throws StoreException {
    return database().read(sql -> new Patients(sql).caseload(search, limit));
  }

  @Override
  public Optional<Patient> patient(PatientId id) throws StoreException {
    return database().read(sql -> new Patients(sql).find(id));
  }

  @Override
  public void savePatient(Patient patient, List<Precaution> precautions) throws StoreException {
    change(sql -> new Patients(sql).save(patient, precautions));
  }

  @Override
  public List<Precaution> precautions(PatientId id) throws StoreException {
    return database().read(sql -> new Patients(sql).precautions(id));
  }

  @Override
  public List<Evaluation> evaluations(PatientId id) throws StoreException {
    return database()
        .read(
            sql -> {
              List<Evaluation> newestFirst = new ArrayList<>(new Evaluations(sql).of(id));
              Collections.reverse(newestFirst);
              return newestFirst;
            });
  }

  @Override
  public Optional<EvaluationRecord> evaluation(EvaluationId id) throws StoreException {
    return database()
        .read(
            sql -> {
              Optional<Evaluation> head = new Evaluations(sql).find(id);
              return head.isEmpty() ? Optional.empty() : Optional.of(whole(sql, head.get()));
            });
  }

  private static EvaluationRecord whole(Sql sql, Evaluation head) throws SQLException {
    Entries entries = new Entries(sql);
    return new EvaluationRecord(
        head,
        Ledger.of(entries.of(head.id())),
        new Evaluations(sql).definitions(head.id()),
        entries.drafts(head.id()));
  }

  @Override
  public void begin(Evaluation evaluation, List<DefinitionText> definitions) throws StoreException {
    change(
        sql -> {
          if (new Patients(sql).find(evaluation.patient()).isEmpty()) {
            throw notFound("patient", evaluation.patient());
          }
          Evaluations evaluations = new Evaluations(sql);
          if (evaluations.find(evaluation.id()).isPresent()) {
            throw new StoreException(
                StoreException.Cause.CONFLICT,
                "Evaluation " + evaluation.id() + " has been begun already.",
                null);
          }
          evaluations.insert(evaluation, definitions);
        });
  }

  @Override
  public void addDefinition(EvaluationId id, DefinitionText definition) throws StoreException {
    change(
        sql -> {
          require(sql, id);
          new Evaluations(sql).add(id, definition);
        });
  }

  @Override
  public void choose(EvaluationId id, String key, String value) throws StoreException {
    change(
        sql -> {
          require(sql, id);
          Evaluations evaluations = new Evaluations(sql);
          if (evaluations.find(id).orElseThrow().state() == Evaluation.State.SIGNED) {
            throw new StoreException(
                StoreException.Cause.CONFLICT,
                "Evaluation " + id + " is signed: what it was made under stays as it is.",
                null);
          }
          evaluations.choose(id, key, value);
        });
  }

  @Override
  public Map<String, String> lastChoices() throws StoreException {
    return database().read(sql -> new Evaluations(sql).lastChoices());
  }

  @Override
  public void append(EvaluationId id, List<Entry> entries) throws StoreException {
    change(
        sql -> {
          require(sql, id);
          new Entries(sql).append(id, entries);
        });
  }

  @Override
  public void draft(EvaluationId id, ItemKey key, String text) throws StoreException {
    change(
        sql -> {
          require(sql, id);
          new Entries(sql).draft(id, key, text);
        });
  }

  private static void require(Sql sql, EvaluationId id) throws SQLException, StoreException {
    String query = "SELECT id FROM evaluation WHERE id = ?" + sql.dialect().forUpdate();
    if (sql.one(row -> id, query, id).isEmpty()) {
      throw notFound("evaluation", id);
    }
  }

  private static StoreException notFound(String what, Object id) {
    return new StoreException(
        StoreException.Cause.NOT_FOUND,
        "There is no " + what + " " + id + " in the records. Nothing was stored.",
        null);
  }

  @Override
  public Optional<PatientRecord> record(PatientId id) throws StoreException {
    return database()
        .read(
            sql -> {
              Patients patients = new Patients(sql);
              Optional<Patient> patient = patients.find(id);
              if (patient.isEmpty()) {
                return Optional.empty();
              }
              ArrayList<EvaluationRecord> evaluations = new ArrayList<>();
              for (Evaluation head : new Evaluations(sql).of(id)) {
                evaluations.add(whole(sql, head));
              }
              return Optional.of(
                  new PatientRecord(patient.get(), patients.precautions(id), evaluations));
            });
  }

  @Override
  public int importRecords(List<PatientRecord> records) throws StoreException {
    return database().write(sql -> new Import(sql).take(records));
  }

  /** A change that gives nothing back. */
  private interface Change {
    void on(Sql sql) throws SQLException, StoreException;
  }

  private void change(Change change) throws StoreException {
    database()
        .write(
            sql -> {
              change.on(sql);
              return null;
            });
  }

  @Override
  @Deactivate
  public void close() {
    if (chosen != null) {
      chosen.close();
    }
  }
}
