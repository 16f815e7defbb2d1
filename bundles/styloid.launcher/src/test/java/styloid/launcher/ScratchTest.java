package styloid.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ScratchTest {
  @TempDir private Path data;

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(data)) {
      return files.map(f -> f.getFileName().toString()).toList();
    }
  }

  @Test
  void nothingIsLeftAfterARun() throws IOException {
    try (Scratch scratch = Scratch.in(data)) {
      Files.createDirectories(scratch.bundles().resolve("1"));
      Files.writeString(scratch.bundles().resolve("1").resolve("x"), "x");
    }
    assertEquals(List.of(), names());
  }

  @Test
  void whatACrashLeftBehindIsDeletedAtTheNextStartAndDataIsNot() throws IOException {
    Path left = Files.createDirectories(data.resolve("run-123"));
    Files.writeString(left.resolve("lock"), "");
    Files.createDirectories(left.resolve("bundles").resolve("4"));
    Files.writeString(data.resolve("patients"), "kept");
    try (Scratch scratch = Scratch.in(data)) {
      assertTrue(Files.notExists(left));
      assertTrue(scratch.bundles().startsWith(data));
    }
    assertEquals(List.of("patients"), names());
  }

  @Test
  void aSecondRunLeavesTheFirstAlone() throws IOException {
    try (Scratch first = Scratch.in(data)) {
      Files.createDirectories(first.bundles());
      try (Scratch second = Scratch.in(data)) {
        assertNotEquals(first.bundles(), second.bundles());
        assertTrue(Files.exists(first.bundles()));
      }
      assertTrue(Files.exists(first.bundles()));
    }
  }
}
