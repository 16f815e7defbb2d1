package styloid.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DataFolderTest {
  private static final Path HOME = Path.of("home").toAbsolutePath();

  private static Arguments asked(String data, boolean demo) {
    return new Arguments(Optional.ofNullable(data).map(Path::of), demo, List.of());
  }

  private static String chosen(Arguments asked, Map<String, String> env, String os) {
    Path folder = DataFolder.choose(asked, env, os, HOME.toString());
    return HOME.relativize(folder).toString().replace('\\', '/');
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          Linux,      .local/share/styloid
          FreeBSD,    .local/share/styloid
          Mac OS X,   Library/Application Support/Styloid
          Windows 11, AppData/Roaming/Styloid
          """)
  void eachSystemHasItsOwnPlace(String os, String folder) {
    assertEquals(folder, chosen(asked(null, false), Map.of(), os));
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          Linux,      XDG_DATA_HOME, shared/styloid
          Windows 11, APPDATA,       shared/Styloid
          Mac OS X,   XDG_DATA_HOME, Library/Application Support/Styloid
          Linux,      APPDATA,       .local/share/styloid
          """)
  void theSystemsOwnVariableCountsThereAlone(String os, String variable, String folder) {
    Map<String, String> env = Map.of(variable, HOME.resolve("shared").toString());
    assertEquals(folder, chosen(asked(null, false), env, os));
  }

  @Test
  void aRelativeSharedPlaceIsIgnored() {
    Map<String, String> env = Map.of("XDG_DATA_HOME", "shared");
    assertEquals(".local/share/styloid", chosen(asked(null, false), env, "Linux"));
  }

  @Test
  void theOptionComesBeforeTheVariableAndThatBeforeTheSystem() {
    HashMap<String, String> env = new HashMap<>();
    env.put("XDG_DATA_HOME", HOME.resolve("shared").toString());
    env.put("STYLOID_DATA", HOME.resolve("clinic").toString());
    assertEquals("clinic", chosen(asked(null, false), env, "Linux"));
    assertEquals("mine", chosen(asked(HOME.resolve("mine").toString(), false), env, "Linux"));
    env.put("STYLOID_DATA", " ");
    assertEquals("shared/styloid", chosen(asked(null, false), env, "Linux"));
  }

  @Test
  void theDemoClinicNeverSharesAFolderWithRealPatients() {
    assertEquals(".local/share/styloid/demo", chosen(asked(null, true), Map.of(), "Linux"));
    assertEquals(
        "mine/demo", chosen(asked(HOME.resolve("mine").toString(), true), Map.of(), "Linux"));
  }

  @Test
  void aNewFolderIsForItsOwnerAloneWhereTheSystemCanSayThat(@TempDir Path temp) throws IOException {
    Path folder = temp.resolve("a").resolve("b");
    DataFolder.create(folder);
    assertTrue(Files.isDirectory(folder));
    if (FileSystems.getDefault().supportedFileAttributeViews().contains("posix")) {
      assertEquals(
          "rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(folder)));
    }
  }

  @Test
  void aFolderThatIsThereIsLeftAsItIs(@TempDir Path temp) throws IOException {
    Files.writeString(temp.resolve("kept"), "kept");
    DataFolder.create(temp);
    assertTrue(Files.exists(temp.resolve("kept")));
  }
}
