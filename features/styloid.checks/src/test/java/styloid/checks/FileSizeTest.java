package styloid.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A file of more than 400 lines knows too many things. */
class FileSizeTest {
  private static final int MOST_LINES = 400;

  @Test
  void mainFilesAreShort() {
    ArrayList<String> tooLong = new ArrayList<>();
    int read = 0;
    for (String bundle : Project.bundles()) {
      Path sources = Project.ROOT.resolve("bundles").resolve(bundle).resolve("src/main/java");
      for (Path file : Project.files(sources, ".java")) {
        read++;
        long lines = Project.text(file).lines().count();
        if (lines > MOST_LINES) {
          tooLong.add(file.getFileName() + ": " + lines);
        }
      }
    }
    assertEquals(List.of(), tooLong);
    assertTrue(read > 50, "only " + read + " files were read");
  }
}
