package styloid.workbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import styloid.spi.Texts;

class TargetFileTest {
  private static final byte[] OLD = {1, 2, 3};
  private static final byte[] NEW = {4, 5, 6, 7};

  @TempDir Path folder;
  private Path target;
  private TargetFile file;

  @BeforeEach
  void oldFileStands() throws IOException {
    target = folder.resolve("evaluation.xlsx");
    Files.write(target, OLD);
    file = new TargetFile(target, new Say(new Texts(Map.of(), Locale.ENGLISH), List.of()));
  }

  @Test
  void isOldWhileTheNewOneIsLookedAtAndNewAfterwards() throws IOException {
    file.replace(
        NEW,
        written -> {
          assertEquals(folder, written.getParent());
          assertArrayEquals(NEW, Files.readAllBytes(written));
          assertArrayEquals(OLD, Files.readAllBytes(target));
        });
    assertArrayEquals(NEW, Files.readAllBytes(target));
    assertOnlyTheTarget();
  }

  static Stream<Arguments> failures() {
    return Stream.of(
        Arguments.of(new IOException("No space left on device"), "is full"),
        Arguments.of(new IOException("Disk quota exceeded"), "is full"),
        Arguments.of(
            new FileSystemException("a", null, "There is not enough space on the disk"), "is full"),
        Arguments.of(new AccessDeniedException("a"), "open in another program"),
        Arguments.of(
            new FileSystemException(
                "a",
                "b",
                "The process cannot access the file because it is being used by another process"),
            "open in another program"),
        Arguments.of(new IOException("Input/output error"), "Input/output error"));
  }

  @ParameterizedTest
  @MethodSource("failures")
  void failureIsToldInWordsAndTheOldFileStays(IOException cause, String words) throws IOException {
    IOException told =
        assertThrows(
            IOException.class,
            () ->
                file.replace(
                    NEW,
                    written -> {
                      throw cause;
                    }));
    assertTrue(told.getMessage().contains(words), told.getMessage());
    assertTrue(told.getMessage().contains(target.toString()), told.getMessage());
    assertEquals(cause, told.getCause());
    assertArrayEquals(OLD, Files.readAllBytes(target));
    assertOnlyTheTarget();
  }

  @Test
  void mismatchSaysWhereAndKeepsTheOldFile() throws IOException {
    IOException told =
        assertThrows(
            IOException.class,
            () ->
                file.replace(
                    NEW,
                    written -> {
                      throw file.mismatch("sheet Entries, cell B7");
                    }));
    assertTrue(told.getMessage().contains("sheet Entries, cell B7"), told.getMessage());
    assertArrayEquals(OLD, Files.readAllBytes(target));
    assertOnlyTheTarget();
  }

  private void assertOnlyTheTarget() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      assertEquals(List.of(target), files.toList());
    }
  }
}
