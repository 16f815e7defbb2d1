package styloid.workbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import styloid.model.Side;
import styloid.spi.Progress;
import styloid.spi.Report;

class WorkbookExporterTest {
  private static final byte[] OLD = "the old file".getBytes(StandardCharsets.UTF_8);

  @TempDir Path folder;
  private final WorkbookExporter exporter = new WorkbookExporter();
  private Path target;

  @BeforeEach
  void oldFileStands() throws IOException {
    target = folder.resolve("evaluation.xlsx");
    Files.write(target, OLD);
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  private void assertUntouched() throws IOException {
    assertArrayEquals(OLD, Files.readAllBytes(target));
    assertEquals(List.of("evaluation.xlsx"), names());
  }

  @Test
  void writesXlsx() {
    assertEquals("xlsx", exporter.format());
  }

  @Test
  void replacesTheOldFileAndLeavesNothingElse() throws IOException {
    exporter.write(Sample.full().report(), target, Progress.none());
    assertEquals(List.of("evaluation.xlsx"), names());
    assertEquals('P', Files.readAllBytes(target)[0]);
  }

  @Test
  void sameReportGivesTheSameBytes() throws IOException {
    Path again = folder.resolve("again.xlsx");
    exporter.write(Sample.full().report(), target, Progress.none());
    exporter.write(Sample.full().report(), again, Progress.none());
    assertArrayEquals(Files.readAllBytes(target), Files.readAllBytes(again));
  }

  @Test
  void anotherValueGivesOtherBytes() throws IOException {
    Sample other = Sample.full();
    other.squeeze(Side.LEFT, "18.5", "19.5", "21.5");
    Path again = folder.resolve("again.xlsx");
    exporter.write(Sample.full().report(), target, Progress.none());
    exporter.write(other.report(), again, Progress.none());
    assertTrue(Files.mismatch(target, again) >= 0);
  }

  @Test
  void tellsItsStepsInOrderUpToTheLast() throws IOException {
    List<String> steps = new ArrayList<>();
    exporter.write(Sample.full().report(), target, progress(steps, Integer.MAX_VALUE));
    assertEquals(List.of("0/8", "1/8", "2/8", "3/8", "4/8", "5/8", "6/8", "7/8", "8/8"), steps);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7, 8})
  void cancelledAtAnyPointLeavesTheOldFile(int askedBefore) throws IOException {
    Progress progress = progress(new ArrayList<>(), askedBefore);
    assertThrows(
        CancellationException.class,
        () -> exporter.write(Sample.full().report(), target, progress));
    assertUntouched();
  }

  /** Cancelled once it has been asked this often. */
  private static Progress progress(List<String> steps, int askedBefore) {
    return new Progress() {
      private int asked;

      @Override
      public void step(int done, int of) {
        steps.add(done + "/" + of);
      }

      @Override
      public boolean cancelled() {
        return asked++ >= askedBefore;
      }
    };
  }

  @Test
  void progressThatThrowsAtTheLastMomentLeavesTheOldFile() throws IOException {
    Progress breaking =
        new Progress() {
          @Override
          public void step(int done, int of) {
            if (done == of - 1) {
              throw new IllegalStateException("broken window");
            }
          }

          @Override
          public boolean cancelled() {
            return false;
          }
        };
    Report report = Sample.full().report();
    assertThrows(IllegalStateException.class, () -> exporter.write(report, target, breaking));
    assertUntouched();
  }

  @Test
  void missingFolderIsNamedWithWhatToDo() {
    Path missing = folder.resolve("nowhere").resolve("evaluation.xlsx");
    IOException e = failure(missing);
    assertTrue(e.getMessage().contains(folder.resolve("nowhere").toString()), e.getMessage());
    assertTrue(e.getMessage().contains("Create it"), e.getMessage());
    assertFalse(Files.exists(folder.resolve("nowhere")));
  }

  @Test
  void folderAsTargetIsRefusedAndKept() throws IOException {
    Path inTheWay = Files.createDirectory(folder.resolve("plans"));
    IOException e = failure(inTheWay);
    assertTrue(e.getMessage().contains("is a folder"), e.getMessage());
    assertTrue(Files.isDirectory(inTheWay));
    assertEquals(List.of("evaluation.xlsx", "plans"), names());
  }

  private IOException failure(Path where) {
    Report report = Sample.full().report();
    return assertThrows(IOException.class, () -> exporter.write(report, where, Progress.none()));
  }

  @Test
  void warmUpWritesNoFile() throws IOException {
    exporter.warmUp();
    assertUntouched();
  }

  @Test
  void madeUpReportReadsBackEqual() throws IOException {
    Book book = Plan.of(MadeUpReport.create());
    byte[] bytes = BookWriter.write(book, sheet -> {});
    assertEquals(
        Optional.empty(),
        ReadBack.difference(book, PackageReader.read(new ByteArrayInputStream(bytes))));
  }
}
