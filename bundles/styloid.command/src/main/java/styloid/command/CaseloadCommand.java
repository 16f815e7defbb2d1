package styloid.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import styloid.session.Batch;
import styloid.session.Pseudonym;
import styloid.spi.Paper;
import styloid.store.StoreException;

/** Writes one workbook of the whole caseload: a row an evaluation and a row a measure. */
@Command(name = "caseload")
final class CaseloadCommand implements Callable<Integer> {
  private static final int KEY_BYTES = 32;

  private final Surroundings surroundings;

  @Option(names = "--to", required = true, paramLabel = "FILE", descriptionKey = "caseload.to")
  private Path to;

  @Option(names = "--deidentify", paramLabel = "KEYFILE", descriptionKey = "caseload.deidentify")
  private Path keyFile;

  @Option(names = "--overwrite", descriptionKey = "overwrite")
  private boolean overwrite;

  @Mixin private SelectionOptions which;

  CaseloadCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws IOException, StoreException {
    if (!overwrite && Files.exists(to)) {
      surroundings.say(surroundings.err(), "workbook.exists", to.toString());
      return ExitCode.PROBLEMS;
    }
    Optional<Pseudonym> pseudonym = Optional.empty();
    if (keyFile != null) {
      try {
        pseudonym = Optional.of(new Pseudonym(key()));
      } catch (IllegalArgumentException e) {
        surroundings.say(surroundings.err(), "caseload.bad-key", keyFile.toString());
        return ExitCode.PROBLEMS;
      }
    }
    Batch batch =
        new Batch(surroundings.session(), which.selection(), Surroundings.LANGUAGE, Paper.A4);
    Batch.Outcome outcome = batch.caseload(to, pseudonym, surroundings.progress());
    surroundings.sayAll(surroundings.err(), outcome.failed());
    surroundings.say(surroundings.out(), "caseload.done", outcome.written(), to.toString());
    return outcome.failed().isEmpty() ? ExitCode.OK : ExitCode.PROBLEMS;
  }

  /** The key in the file, in hexadecimal; a new one where there is no such file. */
  private byte[] key() throws IOException {
    if (Files.exists(keyFile)) {
      return HexFormat.of().parseHex(Files.readString(keyFile).strip());
    }
    byte[] key = new byte[KEY_BYTES];
    new SecureRandom().nextBytes(key);
    Files.createFile(keyFile);
    if (Files.getFileStore(keyFile).supportsFileAttributeView("posix")) {
      Files.setPosixFilePermissions(keyFile, PosixFilePermissions.fromString("rw-------"));
    }
    Files.writeString(keyFile, HexFormat.of().formatHex(key) + "\n");
    surroundings.say(surroundings.err(), "caseload.new-key", keyFile.toString());
    return key;
  }
}
