package styloid.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import styloid.exchange.EvaluationFile;
import styloid.model.FileProblem;
import styloid.model.Message;
import styloid.model.PatientRecord;

/** Reads and judges the files a command was given. */
final class Inputs {
  private final Surroundings surroundings;
  private final EntryReview review;

  Inputs(Surroundings surroundings) {
    this.surroundings = surroundings;
    this.review = new EntryReview(surroundings);
  }

  /**
   * Reads all files; a folder stands for the files in it that end with {@code .json}, in the order
   * of their names.
   *
   * @throws IOException when reading itself fails
   */
  List<CheckedFile> read(List<Path> given) throws IOException {
    ArrayList<CheckedFile> read = new ArrayList<>();
    for (Path one : given) {
      List<Path> inside = Files.isDirectory(one) ? jsonFiles(one) : List.of(one);
      if (inside.isEmpty()) {
        read.add(problem(one, "no-files"));
      }
      for (Path file : inside) {
        read.add(Files.exists(file) ? readFile(file) : problem(file, "not-there"));
      }
    }
    return read;
  }

  /** Says all problems and notes; whether the files can be used. */
  boolean usable(List<CheckedFile> files) {
    boolean usable = true;
    for (CheckedFile file : files) {
      surroundings.sayAll(surroundings.err(), file.problems());
      surroundings.sayAll(surroundings.err(), file.notes());
      usable &= file.problems().isEmpty();
    }
    return usable;
  }

  private static List<Path> jsonFiles(Path folder) throws IOException {
    try (Stream<Path> inside = Files.list(folder)) {
      return inside
          .filter(f -> f.getFileName().toString().endsWith(".json") && Files.isRegularFile(f))
          .sorted()
          .toList();
    }
  }

  private CheckedFile problem(Path file, String key) {
    Message why = Message.of(Surroundings.SCOPE, key, file.toString());
    return new CheckedFile(
        file, Optional.empty(), List.of(surroundings.texts().text(why)), List.of());
  }

  private CheckedFile readFile(Path file) throws IOException {
    EvaluationFile.Read read;
    try (InputStream bytes = Files.newInputStream(file);
        InputStreamReader in = new InputStreamReader(bytes, StandardCharsets.UTF_8.newDecoder())) {
      read = EvaluationFile.read(in);
    } catch (CharacterCodingException e) {
      String reason = surroundings.texts().text(Message.of(Surroundings.SCOPE, "not-utf8"));
      return refused(file, List.of(new FileProblem(0, 0, "$", reason)));
    }
    if (read.record().isEmpty()) {
      return refused(file, read.problems());
    }
    PatientRecord record = read.record().get();
    EntryReview.Found found = review.of(file, record);
    return found.problems().isEmpty()
        ? new CheckedFile(file, Optional.of(record), List.of(), lines(file, found.notes()))
        : new CheckedFile(
            file, Optional.empty(), lines(file, found.problems()), lines(file, found.notes()));
  }

  private static CheckedFile refused(Path file, List<FileProblem> problems) {
    return new CheckedFile(file, Optional.empty(), lines(file, problems), List.of());
  }

  private static List<String> lines(Path file, List<FileProblem> problems) {
    return problems.stream().map(problem -> file + ": " + problem).toList();
  }
}
