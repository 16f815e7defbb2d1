package styloid.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static styloid.command.Bench.force;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import styloid.model.PatientRecord;
import styloid.model.Side;
import styloid.store.StoreException;

class DumpCommandTest {
  @TempDir private Path folder;
  private final Bench bench = new Bench();
  private Path dump;

  @BeforeEach
  void twoPatientsAreStored() throws IOException {
    dump = folder.resolve("dump");
    Path files = Files.createDirectory(folder.resolve("files"));
    Bench.file(files, "a.json", "00417", force(Side.LEFT, "27.5"));
    Path other = Bench.file(files, "b.json", "00418", force(Side.LEFT, "3.50"));
    String anotherPerson = Files.readString(other).replace("8f7a01", "8f7a02");
    Files.writeString(other, anotherPerson);
    bench.run("import", files);
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(dump)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void whatIsDumpedAndImportedAgainIsTheSame() throws IOException {
    List<PatientRecord> before = new ArrayList<>(bench.session.stored);
    assertEquals(0, bench.run("dump", "--to", dump));
    assertTrue(bench.out().endsWith("2 patients written, 2 evaluations.\n"), bench.out());
    bench.session.stored.clear();
    assertEquals(0, bench.run("import", dump));
    assertEquals(before.size(), bench.session.stored.size());
    assertTrue(bench.session.stored.containsAll(before));
  }

  @Test
  void namesOfFilesTellNothingOfAPatient() throws IOException {
    bench.run("dump", "--to", dump);
    List<String> ids =
        bench.session.stored.stream().map(r -> r.patient().id() + ".json").sorted().toList();
    assertEquals(ids, names());
  }

  @Test
  void aFolderThatHoldsSomethingIsLeftAlone() throws IOException {
    bench.run("dump", "--to", dump);
    List<String> before = names();
    assertEquals(3, bench.run("dump", "--to", dump));
    assertTrue(bench.err().contains(dump.toString()), bench.err());
    assertEquals(before, names());
  }

  @Test
  void aStoreThatFailsIsSaid() {
    bench.session.refusal =
        Optional.of(new StoreException(StoreException.Cause.DAMAGED, "Because.", null));
    assertEquals(3, bench.run("dump", "--to", dump));
    assertEquals("Because.\n", bench.err());
  }
}
