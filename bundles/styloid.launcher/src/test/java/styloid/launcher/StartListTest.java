package styloid.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StartListTest {
  @TempDir private Path folder;

  @Test
  void remarksAndBlankLinesSayNothingAndOrderIsKept() {
    List<String> lines =
        List.of("# started from top to bottom", "b.jar", "", "  a.jar  ", "#c.jar");
    assertEquals(List.of("b.jar", "a.jar"), StartList.parse(lines));
  }

  @Test
  void severalListsStartEachBundleOnce() throws IOException {
    Files.writeString(folder.resolve("2.list"), "b.jar\nc.jar\n");
    Files.writeString(folder.resolve("1.list"), "a.jar\nb.jar\n");
    Files.writeString(folder.resolve("java.args"), "-Xshare:auto\n");
    assertEquals(List.of("a.jar", "b.jar", "c.jar"), StartList.read(folder));
  }

  @Test
  void aFolderWithoutListIsAnError() {
    assertThrows(NoSuchFileException.class, () -> StartList.read(folder));
  }
}
