package styloid.workbook;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import styloid.model.EvaluationRecord;
import styloid.model.Patient;
import styloid.model.PatientId;
import styloid.model.PatientRecord;
import styloid.session.Batch;
import styloid.session.Selection;
import styloid.session.Session;
import styloid.session.SessionService;
import styloid.session.Sessions;
import styloid.spi.Paper;
import styloid.spi.Progress;
import styloid.store.CaseloadRow;

/**
 * A batch of workbooks from the invented clinic, over and over. By hand: {@code BatchBench 250 500
 * 1000}.
 */
final class BatchBench {
  private BatchBench() {}

  public static void main(String[] args) throws Exception {
    List<PatientRecord> clinic = DemoClinic.records();
    SessionService service = Sessions.with(DemoClinic.MODULES, List.of(new WorkbookExporter()));
    run(service, clinic, 20);
    for (String count : args) {
      run(service, clinic, Integer.parseInt(count));
    }
    Sessions.close(service);
  }

  private static void run(SessionService service, List<PatientRecord> clinic, int evaluations)
      throws Exception {
    Session session = Sessions.over(service, shelf(clinic, evaluations));
    Path folder = Files.createTempDirectory("batch");
    System.gc();
    Runtime now = Runtime.getRuntime();
    long before = now.totalMemory() - now.freeMemory();
    long[] most = {0};
    Progress progress =
        new Progress() {
          @Override
          public void step(int done, int of) {
            if (done % 100 == 99) {
              System.gc();
              most[0] = Math.max(most[0], now.totalMemory() - now.freeMemory());
            }
          }

          @Override
          public boolean cancelled() {
            return false;
          }
        };
    var bean =
        (com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    long cpu = bean.getProcessCpuTime();
    long from = System.nanoTime();
    Batch.Outcome outcome =
        new Batch(session, Selection.all(), Locale.ENGLISH, Paper.A4).files(folder, progress);
    double seconds = (System.nanoTime() - from) / 1e9;
    double busy = (bean.getProcessCpuTime() - cpu) / 1e9;
    System.out.printf(
        Locale.ROOT,
        "%d written, %d failed: %.1f s, %.0f ms each, cores busy %.2f, heap rise %.0f MB%n",
        outcome.written(),
        outcome.failed().size(),
        seconds,
        1000 * seconds / evaluations,
        busy / seconds,
        (most[0] - before) / 1e6);
    outcome.failed().stream().limit(2).forEach(System.out::println);
    delete(folder);
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        Files.delete(file);
      }
    }
    Files.delete(folder);
  }

  /** One patient for each evaluation asked for, made when asked for. */
  private static Sessions.Shelf shelf(List<PatientRecord> clinic, int evaluations) {
    return new Sessions.Shelf() {
      @Override
      public List<CaseloadRow> rows() {
        ArrayList<CaseloadRow> rows = new ArrayList<>();
        for (int i = 0; i < evaluations; i++) {
          rows.add(new CaseloadRow(patient(i), 1, Optional.empty(), 0));
        }
        return rows;
      }

      private Patient patient(int i) {
        Patient p = clinic.get(i % clinic.size()).patient();
        return new Patient(
            new PatientId(new UUID(7, i)),
            "R-" + i,
            p.name(),
            p.birthDate(),
            p.sex(),
            p.dominance(),
            p.involved(),
            p.diagnosis(),
            p.onset(),
            p.surgery(),
            p.heightCm());
      }

      @Override
      public Optional<PatientRecord> record(PatientId id) {
        int i = (int) id.value().getLeastSignificantBits();
        PatientRecord source = clinic.get(i % clinic.size());
        EvaluationRecord one = source.evaluations().get(source.evaluations().size() - 1);
        var e = one.evaluation();
        var head =
            new styloid.model.Evaluation(
                e.id(), id, e.date(), e.therapist(), e.state(), e.versions(), e.choices());
        return Optional.of(
            new PatientRecord(
                patient(i),
                source.precautions(),
                List.of(
                    new EvaluationRecord(head, one.ledger(), one.definitions(), one.drafts()))));
      }
    };
  }
}
