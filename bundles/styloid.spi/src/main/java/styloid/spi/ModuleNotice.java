package styloid.spi;

import java.util.Objects;

/**
 * Something to be told about a module that is not there, or not in its latest form: a declared file
 * that cannot be read, a bundle that waits for approval. Offered as an OSGi service for as long as
 * it holds.
 *
 * @param module id of the test where it is known, else the name of the file
 * @param file name of the file
 * @param code short code; the same kind of notice has the same one
 * @param reason what is wrong, where, and what to do
 */
public record ModuleNotice(String module, String file, String code, String reason) {
  public ModuleNotice {
    Objects.requireNonNull(module, "module");
    Objects.requireNonNull(file, "file");
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(reason, "reason");
  }
}
