package styloid.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static styloid.command.Bench.force;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import styloid.model.Side;

class WorkbookCommandTest {
  @TempDir private Path folder;
  private final Bench bench = new Bench();

  private Path target() {
    return folder.resolve("out");
  }

  private List<String> written() throws IOException {
    try (Stream<Path> files = Files.list(target())) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void everyEvaluationGetsAWorkbookAndItsNameIsTold() throws IOException {
    Path file = Bench.file(folder, "a.json", "00417", force(Side.LEFT, "27.5"));
    assertEquals(0, bench.run("workbook", file, "--to", target()));
    assertEquals(List.of("00417_2026-03-02.xlsx"), written());
    assertEquals(target().resolve("00417_2026-03-02.xlsx") + "\n", bench.out());
  }

  @Test
  void recordNumbersThatBecomeAlikeStayApart() throws IOException {
    Path slash = Bench.file(folder, "a.json", "A/1", force(Side.LEFT, "27.5"));
    Path colon = Bench.file(folder, "b.json", "a:1", force(Side.LEFT, "27.5"));
    assertEquals(0, bench.run("workbook", slash, colon, "--to", target()));
    assertEquals(List.of("A_1_2026-03-02.xlsx", "a_1_2026-03-02_2.xlsx"), written());
    assertEquals("A/1", Files.readString(target().resolve("A_1_2026-03-02.xlsx")));
  }

  @Test
  void aRecordNumberCannotLeaveTheFolder() throws IOException {
    Path file = Bench.file(folder, "a.json", "../../x", force(Side.LEFT, "27.5"));
    assertEquals(0, bench.run("workbook", file, "--to", target()));
    assertEquals(List.of("_x_2026-03-02.xlsx"), written());
  }

  @Test
  void aWorkbookThatIsThereStaysAndNothingElseIsWritten() throws IOException {
    Files.createDirectories(target());
    Path old = Files.writeString(target().resolve("00418_2026-03-02.xlsx"), "old");
    Path first = Bench.file(folder, "a.json", "00417", force(Side.LEFT, "27.5"));
    Path second = Bench.file(folder, "b.json", "00418", force(Side.LEFT, "27.5"));
    assertEquals(1, bench.run("workbook", first, second, "--to", target()));
    assertEquals(List.of("00418_2026-03-02.xlsx"), written());
    assertEquals("old", Files.readString(old));
    assertTrue(bench.err().startsWith(old + " is there already."), bench.err());
  }

  @Test
  void itIsReplacedWhenThatIsAsked() throws IOException {
    Files.createDirectories(target());
    Path old = Files.writeString(target().resolve("00417_2026-03-02.xlsx"), "old");
    Path file = Bench.file(folder, "a.json", "00417", force(Side.LEFT, "27.5"));
    assertEquals(0, bench.run("workbook", "--overwrite", file, "--to", target()));
    assertEquals("00417", Files.readString(old));
  }

  @Test
  void oneBadFileKeepsAllFromBeingWritten() throws IOException {
    Path good = Bench.file(folder, "a.json", "00417", force(Side.LEFT, "27.5"));
    Path bad = Bench.file(folder, "b.json", "00418", force(Side.LEFT, "1000"));
    assertEquals(1, bench.run("workbook", good, bad, "--to", target()));
    assertTrue(Files.notExists(target()));
  }

  @Test
  void diskTroubleSaysWhat() throws IOException {
    bench.session.diskFault = Optional.of(new IOException("No space left on device"));
    Path file = Bench.file(folder, "a.json", "00417", force(Side.LEFT, "27.5"));
    assertEquals(3, bench.run("workbook", file, "--to", target()));
    assertTrue(bench.err().contains("No space left on device"), bench.err());
  }

  @Test
  void withoutTheWriterItSaysSo() throws IOException {
    bench.session.formats = List.of();
    Path file = Bench.file(folder, "a.json", "00417", force(Side.LEFT, "27.5"));
    assertEquals(4, bench.run("workbook", file, "--to", target()));
    assertEquals("The part that writes workbooks did not start.\n", bench.err());
  }

  @Test
  void theFolderMustBeSaid() throws IOException {
    Path file = Bench.file(folder, "a.json", "00417", force(Side.LEFT, "27.5"));
    assertEquals(2, bench.run("workbook", file));
    assertTrue(bench.err().startsWith("Missing required option: '--to=DIR'"), bench.err());
  }
}
