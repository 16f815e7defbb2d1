package styloid.command;

import java.time.LocalDate;
import java.util.Optional;
import picocli.CommandLine.Option;
import styloid.session.Selection;

/** Which evaluations of the store a command is to take. */
final class SelectionOptions {
  @Option(names = "--search", paramLabel = "WORDS", descriptionKey = "select.search")
  private String search = "";

  @Option(names = "--from", paramLabel = "DAY", descriptionKey = "select.from")
  private LocalDate from;

  @Option(names = "--until", paramLabel = "DAY", descriptionKey = "select.until")
  private LocalDate until;

  @Option(names = "--therapist", paramLabel = "NAME", descriptionKey = "select.therapist")
  private String therapist = "";

  @Option(names = "--signed", descriptionKey = "select.signed")
  private boolean signedOnly;

  Selection selection() {
    return new Selection(
        search, Optional.ofNullable(from), Optional.ofNullable(until), therapist, signedOnly);
  }
}
