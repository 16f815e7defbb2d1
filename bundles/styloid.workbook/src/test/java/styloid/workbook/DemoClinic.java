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
 * workbook of each one's last evaluation there, to be looked at.
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
    EvaluationRecord last = record.evaluations().get(record.evaluations().size() - 1);
    return session.report(session.calculate(record, last.evaluation().id()), Locale.ENGLISH);
  }

  public static void main(String... args) throws IOException {
    SessionService session = Sessions.with(MODULES, List.of());
    for (PatientRecord record : records()) {
      String number = record.patient().recordNumber();
      if (args.length == 1 || List.of(args).contains(number)) {
        Path target = Path.of(args[0]).resolve(number + ".xlsx").toAbsolutePath();
        new WorkbookExporter().write(last(session, record), target, Progress.none());
      }
    }
    Sessions.close(session);
  }
}
