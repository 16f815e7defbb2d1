package styloid.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static styloid.command.Bench.entry;
import static styloid.command.Bench.force;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import styloid.model.Side;

class CheckCommandTest {
  @TempDir private Path folder;
  private final Bench bench = new Bench();

  @Test
  void aSoundFileIsInOrder() throws IOException {
    Path file = Bench.file(folder, "a.json", "00417", force(Side.LEFT, "27.5"));
    assertEquals(0, bench.run("check", file));
    assertEquals("1 of 1 files are in order.\n", bench.out());
    assertEquals("", bench.err());
  }

  @Test
  void aFaultInTheFormNamesFileLinePathAndReason() throws IOException {
    Path file = Bench.file(folder, "a.json", "00417", "{\"item\": \"hold/force\"}");
    assertEquals(1, bench.run("check", file));
    assertTrue(bench.err().contains(file + ": line 12, "), bench.err());
    assertTrue(bench.err().contains("$.evaluations[0].entries[0]: \"side\" is missing"));
    assertEquals("0 of 1 files are in order.\n", bench.out());
  }

  @Test
  void anImpossibleValueIsNamedWithItsLine() throws IOException {
    Path file =
        Bench.file(folder, "a.json", "00417", force(Side.LEFT, "27.5"), force(Side.RIGHT, "100.1"));
    assertEquals(1, bench.run("check", file));
    assertEquals(
        file
            + ": line 13, column 1, $.evaluations[0].entries[1]: hold/force/right/none/1: 100.1 kg"
            + " is not possible here: it must be 0 kg to 100 kg. Check the reading and type it"
            + " again.\n",
        bench.err());
  }

  @Test
  void anUnusualValueIsTold() throws IOException {
    Path file = Bench.file(folder, "a.json", "00417", force(Side.LEFT, "60.1"));
    assertEquals(0, bench.run("check", file));
    assertTrue(bench.err().contains("60.1 kg is unusual"), bench.err());
  }

  @Test
  void aSetInTwoUnitsIsToldOnceUnlessConfirmed() throws IOException {
    String pounds = "\"trial\": 2, \"value\": {\"amount\": \"60\", \"unit\": \"[lbf_av]\"}";
    String again = pounds.replace("2,", "3,");
    Path file =
        Bench.file(
            folder,
            "a.json",
            "00417",
            force(Side.LEFT, "27.5"),
            entry("hold/force", Side.LEFT, pounds),
            entry("hold/force", Side.LEFT, again));
    assertEquals(0, bench.run("check", file));
    assertEquals(1, bench.err().lines().count(), bench.err());
    assertTrue(
        bench.err().contains("hold/force/left/none/2: 60 lb? The other readings of this set are"),
        bench.err());
  }

  @Test
  void anUnusualValueThatWasConfirmedIsNot() throws IOException {
    String confirmed =
        entry(
            "hold/force",
            Side.LEFT,
            "\"value\": {\"amount\": \"60.1\", \"unit\": \"kgf\"}, \"confirmed\": true");
    assertEquals(0, bench.run("check", Bench.file(folder, "a.json", "00417", confirmed)));
    assertEquals("", bench.err());
  }

  @Test
  void aPlaceTheTestDoesNotHaveIsRefused() throws IOException {
    String fourth =
        entry(
            "hold/force",
            Side.LEFT,
            "\"trial\": 4, \"value\": {\"amount\": \"27.5\", \"unit\": \"kgf\"}");
    assertEquals(1, bench.run("check", Bench.file(folder, "a.json", "00417", fourth)));
    assertTrue(bench.err().contains("hold/force/left/none/4: the test as defined"), bench.err());
  }

  @Test
  void valuesOfATestNobodyKnowsAreKeptAndToldOnce() throws IOException {
    String right = entry("clinic-own/coins", Side.RIGHT, "\"value\": {\"text\": \"8\"}");
    String left = entry("clinic-own/coins", Side.LEFT, "\"value\": {\"text\": \"9\"}");
    Path file = Bench.file(folder, "a.json", "00417", right, left);
    assertEquals(0, bench.run("check", file));
    assertEquals(1, bench.err().lines().count(), bench.err());
    assertTrue(bench.err().contains("line 12, "), bench.err());
    assertTrue(bench.err().contains("no module here knows the test clinic-own"), bench.err());
  }

  @Test
  void aFolderStandsForItsFilesAndEveryOneIsJudged() throws IOException {
    Bench.file(folder, "b.json", "00417", force(Side.LEFT, "27.5"));
    Bench.file(folder, "a.json", "00418", force(Side.LEFT, "-1"));
    Files.writeString(folder.resolve("notes.txt"), "not an evaluation");
    assertEquals(1, bench.run("check", folder));
    assertEquals("1 of 2 files are in order.\n", bench.out());
    assertTrue(bench.err().startsWith(folder.resolve("a.json") + ": line 12"), bench.err());
  }

  @Test
  void aFileThatIsNotThereIsNamed() {
    Path file = folder.resolve("absent.json");
    assertEquals(1, bench.run("check", file));
    assertEquals(file + " is not there.\n", bench.err());
  }

  @Test
  void aFolderWithoutFilesIsNamed() {
    assertEquals(1, bench.run("check", folder));
    assertEquals(folder + " holds no evaluation file (*.json).\n", bench.err());
  }

  @Test
  void bytesThatAreNoTextAreAProblemOfTheFile() throws IOException {
    Path file = folder.resolve("a.json");
    Files.write(file, new byte[] {'{', '"', (byte) 0xC3, (byte) 0x28, '"', '}'});
    assertEquals(1, bench.run("check", file));
    assertTrue(bench.err().contains("UTF-8"), bench.err());
  }
}
