package styloid.checks.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import styloid.checks.Modules;
import styloid.exchange.EvaluationFile;
import styloid.model.PatientRecord;
import styloid.spi.TestModule;

/**
 * The files of the demo clinic are those written here. Run {@link #main} after a module's items
 * changed, to write them anew.
 */
class DemoClinicTest {
  private static final String FOLDER = "demo-data/patients";

  private static List<PatientRecord> records() {
    return new DemoClinic(Modules.all().stream().map(TestModule::definition).toList()).records();
  }

  private static TreeMap<String, String> files() throws IOException {
    TreeMap<String, String> files = new TreeMap<>();
    for (PatientRecord record : records()) {
      StringWriter out = new StringWriter();
      EvaluationFile.write(record, out);
      files.put(record.patient().recordNumber().toLowerCase(Locale.ROOT) + ".json", out.toString());
    }
    return files;
  }

  /** Writes the files; argument: the project's folder. */
  public static void main(String... args) throws IOException {
    Path folder = Path.of(args[0]).resolve(FOLDER);
    Files.createDirectories(folder);
    for (var file : files().entrySet()) {
      Files.writeString(folder.resolve(file.getKey()), file.getValue(), StandardCharsets.UTF_8);
    }
  }

  @Test
  void theFilesAreThoseOfThisClinic() throws IOException {
    TreeMap<String, String> expected = files();
    TreeSet<String> found = new TreeSet<>();
    Path folder = Path.of("../..").resolve(FOLDER);
    try (var all = Files.list(folder)) {
      all.forEach(f -> found.add(f.getFileName().toString()));
    }
    assertEquals(expected.keySet(), found);
    for (var file : expected.entrySet()) {
      assertEquals(file.getValue(), Files.readString(folder.resolve(file.getKey())), file.getKey());
    }
  }

  @Test
  void everyFileReadsBackEqual() throws IOException {
    for (PatientRecord record : records()) {
      StringWriter out = new StringWriter();
      EvaluationFile.write(record, out);
      EvaluationFile.Read read = EvaluationFile.read(new StringReader(out.toString()));
      assertEquals(List.of(), read.problems());
      assertEquals(Optional.of(record), read.record());
    }
  }

  @Test
  void thereAreTwelvePatientsAndTwentyEvaluationsAllMarkedAsInvented() {
    List<PatientRecord> records = records();
    int evaluations = records.stream().mapToInt(r -> r.evaluations().size()).sum();
    assertTrue(records.size() >= 12 && evaluations >= 20, records.size() + ", " + evaluations);
    for (PatientRecord record : records) {
      assertTrue(record.patient().name().endsWith("(invented)"));
      assertTrue(record.patient().diagnosis().startsWith("Invented example"));
    }
  }
}
