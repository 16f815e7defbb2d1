package styloid.command;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import styloid.model.FileProblem;
import styloid.model.Message;
import styloid.spi.DeclaredTests;

/** Reads declared tests a command was given. */
final class DeclaredInputs {
  private static final long LONGEST = 4_000_000;

  private final Surroundings surroundings;

  DeclaredInputs(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  /** Whether a file's text is that of a declared test, not of an evaluation. */
  static boolean isOne(Path file) throws IOException {
    if (!Files.isRegularFile(file) || Files.size(file) > LONGEST) {
      return false;
    }
    String text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
    return !text.contains("\"evaluations\"")
        && !text.contains("\"recordNumber\"")
        && (text.contains("\"items\"") || text.contains("\"results\""));
  }

  /** Reads and judges a file; a test of the same id that is loaded does not stand in its way. */
  DeclaredTests.Read read(DeclaredTests declared, Path file) throws IOException {
    Path folder = file.toAbsolutePath().getParent();
    Optional<String> text = text(file);
    return text.isPresent()
        ? declared.read(text.get(), name -> quietly(folder.resolve(name)), Set.of())
        : new DeclaredTests.Read(Optional.empty(), List.of(notText()));
  }

  /** Text of a file; empty when it is not UTF-8. */
  static Optional<String> text(Path file) throws IOException {
    try {
      return Optional.of(Files.readString(file, StandardCharsets.UTF_8));
    } catch (CharacterCodingException e) {
      return Optional.empty();
    }
  }

  private static Optional<String> quietly(Path file) {
    try {
      return Files.isRegularFile(file) && Files.size(file) <= LONGEST
          ? text(file)
          : Optional.empty();
    } catch (IOException e) {
      // said as a file that is not beside the test
      return Optional.empty();
    }
  }

  FileProblem notText() {
    Message reason = Message.of(Surroundings.SCOPE, "not-utf8");
    return new FileProblem(0, 0, "$", surroundings.texts().text(reason));
  }

  /** Says the problems of a file; whether there are none. */
  boolean sound(Path file, List<FileProblem> problems) {
    problems.forEach(problem -> surroundings.err().println(file + ": " + problem));
    return problems.isEmpty();
  }
}
