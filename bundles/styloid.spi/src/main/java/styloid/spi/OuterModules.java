package styloid.spi;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.osgi.annotation.versioning.ProviderType;

/**
 * Bundles from outside the suite: what lies in the folder of modules, and which of it an
 * administrator approved. Offered as an OSGi service. A bundle runs with all rights of the suite.
 */
@ProviderType
public interface OuterModules {
  /** Waits until what lay in the folder at the start was looked at. */
  void settle();

  /** The files in the folder, by name. */
  List<Found> found();

  /**
   * What a file is, wherever it lies.
   *
   * @throws IOException when it cannot be read or is no bundle; the message says why
   */
  Found look(Path file) throws IOException;

  /**
   * Approves exactly this name, version and content, from now on.
   *
   * @throws IOException when that cannot be written down
   */
  void approve(Found module) throws IOException;

  /** How far a file has come. */
  enum State {
    /** Waits for an administrator. */
    WAITS,
    RUNS,
    /** Approved, yet does not run; the reason says why. */
    REFUSED
  }

  /**
   * A bundle file.
   *
   * @param sha256 of its bytes, 64 hexadecimal digits in lower case
   * @param reason in words; empty where there is nothing to say
   */
  record Found(
      String file, String name, String version, String sha256, State state, String reason) {}
}
