package styloid.workbook;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import styloid.exchange.EvaluationFile;
import styloid.goniometry.Goniometry;
import styloid.grading.Grading;
import styloid.grip.GripModule;
import styloid.model.EvaluationRecord;
import styloid.model.PatientRecord;
import styloid.screen.Screen;
import styloid.session.SessionService;
import styloid.session.Sessions;
import styloid.spi.Progress;
import styloid.spi.Report;
import styloid.spi.TestModule;

/**
 * The invented patients of the demo clinic, as reports. By hand: {@code DemoClinic FOLDER} writes a
 * workbook of each evaluation there, to be looked at.
 */
final class DemoClinic {
  static final List<TestModule> MODULES =
      List.of(new Screen(), new Goniometry(), new Grading(), new GripModule());

  private DemoClinic() {}

  static List<PatientRecord> records() throws IOException {
    ArrayList<PatientRecord> records = new ArrayList<>();
    try (var files = Files.list(Path.of("../../demo-data/patients"))) {
      for (Path file : files.sorted().toList()) {
        try (Reader in = Files.newBufferedReader(file)) {
          records.add(EvaluationFile.read(in).record().orElseThrow());
        }
      }
    }
    return records;
  }

  /** The last evaluation of a patient, with those before as its past. */
  static Report last(SessionService session, PatientRecord record) {
    return report(session, record, record.evaluations().get(record.evaluations().size() - 1));
  }

  private static Report report(
      SessionService session, PatientRecord record, EvaluationRecord visit) {
    return session.report(session.calculate(record, visit.evaluation().id()), Locale.ENGLISH);
  }

  public static void main(String... args) throws IOException {
    SessionService session = Sessions.with(MODULES, List.of());
    for (PatientRecord record : records()) {
      for (EvaluationRecord visit : record.evaluations()) {
        String name = record.patient().recordNumber() + "_" + visit.evaluation().date() + ".xlsx";
        Path target = Path.of(args[0]).resolve(name).toAbsolutePath();
        new WorkbookExporter().write(report(session, record, visit), target, Progress.none());
      }
    }
    Sessions.close(session);
  }
}
