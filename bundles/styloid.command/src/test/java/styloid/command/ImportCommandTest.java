package styloid.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static styloid.command.Bench.force;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import styloid.model.Side;
import styloid.store.StoreException;

class ImportCommandTest {
  @TempDir private Path folder;
  private final Bench bench = new Bench();

  private List<String> stored() {
    return bench.session.stored.stream().map(r -> r.patient().recordNumber()).toList();
  }

  @Test
  void soundFilesAreStoredInOneStep() throws IOException {
    Bench.file(folder, "a.json", "00417", force(Side.LEFT, "27.5"));
    Bench.file(folder, "b.json", "00418", force(Side.LEFT, "27.5"));
    assertEquals(0, bench.run("import", folder));
    assertEquals(List.of("00417", "00418"), stored());
    assertEquals("2 patients read, 2 evaluations new.\n", bench.out());
  }

  @Test
  void oneBadFileKeepsAllOut() throws IOException {
    Bench.file(folder, "a.json", "00417", force(Side.LEFT, "27.5"));
    Bench.file(folder, "b.json", "00418", force(Side.LEFT, "1000"));
    assertEquals(1, bench.run("import", folder));
    assertEquals(List.of(), stored());
    assertTrue(bench.err().endsWith("Nothing was stored.\n"), bench.err());
  }

  @Test
  void aStoreWithAPatientIsLeftAloneWhenAskedForAnEmptyOne() throws IOException {
    Path file = Bench.file(folder, "a.json", "00417", force(Side.LEFT, "27.5"));
    assertEquals(0, bench.run("import", "--if-empty", file));
    assertEquals(0, bench.run("import", "--if-empty", file));
    assertEquals(List.of("00417"), stored());
    assertEquals("", bench.out() + bench.err());
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          CONFLICT,      1
          IN_USE,        3
          NEWER_VERSION, 3
          DAMAGED,       3
          READ_ONLY,     3
          DISK_FULL,     3
          UNREACHABLE,   3
          OTHER,         3
          """)
  void theStoresReasonDecidesTheExitCode(StoreException.Cause why, int code) throws IOException {
    bench.session.refusal = Optional.of(new StoreException(why, "Because.", null));
    Path file = Bench.file(folder, "a.json", "00417", force(Side.LEFT, "27.5"));
    assertEquals(code, bench.run("import", file));
    assertEquals("Because.\n", bench.err());
  }
}
