package styloid.spi;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.CancellationException;
import org.osgi.annotation.versioning.ConsumerType;

/** Writes a report to a file of one format, offered as an OSGi service. */
@ConsumerType
public interface Exporter {
  /** Short name of the format, such as {@code xlsx}; also the ending of its files. */
  String format();

  /**
   * Writes the report so that {@code target} is afterwards either the whole new file or what it was
   * before: a temporary file beside it is written, read back, compared and moved into place.
   *
   * @throws CancellationException when the progress said to stop; nothing is left behind
   * @throws IOException when the file cannot be written or does not read back equal
   */
  void write(Report report, Path target, Progress progress) throws IOException;

  /**
   * Writes a caseload row by row in memory that does not grow with it, under the same promise.
   *
   * @throws IOException also when this format has no such file
   */
  default void write(Caseload caseload, Path target, Progress progress) throws IOException {
    throw new IOException("A caseload cannot be written as " + format() + ".");
  }

  /** Does once what makes the first export slow; called while the suite is idle. */
  default void warmUp() {}
}
