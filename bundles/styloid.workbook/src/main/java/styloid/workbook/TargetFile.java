package styloid.workbook;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Locale;

/**
 * Puts bytes in place of a file so that the file is afterwards either wholly new or untouched. What
 * goes wrong is told with the place and what to do.
 */
final class TargetFile {
  private static final int BUFFER = 1 << 16;

  private final Path target;
  private final Say say;

  TargetFile(Path target, Say say) {
    this.target = target.toAbsolutePath();
    this.say = say;
  }

  /** Looks at the temporary file before it becomes the target; stops by throwing. */
  interface Inspection {
    void look(Path written) throws IOException;
  }

  /** Writes the new file. */
  interface Filling {
    void fill(OutputStream out) throws IOException;
  }

  void replace(byte[] bytes, Inspection inspection) throws IOException {
    replace(out -> out.write(bytes), inspection);
  }

  void replace(Filling filling, Inspection inspection) throws IOException {
    Path folder = target.getParent();
    if (folder == null || Files.isDirectory(target)) {
      throw new IOException(say.own("error.is-folder", target.toString()));
    }
    if (!Files.isDirectory(folder)) {
      throw new IOException(say.own("error.folder", folder.toString()));
    }
    Path written = null;
    try {
      written = Files.createTempFile(folder, ".styloid-", ".part");
      fill(written, filling);
      inspection.look(written);
      Files.move(
          written, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (Mismatch e) {
      throw e;
    } catch (IOException e) {
      throw new IOException(explain(e), e);
    } finally {
      if (written != null) {
        Files.deleteIfExists(written);
      }
    }
  }

  /** The file did not read back as planned. */
  static final class Mismatch extends IOException {
    private static final long serialVersionUID = 1L;

    Mismatch(String message) {
      super(message);
    }
  }

  Mismatch mismatch(String where) {
    return new Mismatch(say.own("error.compare", target.toString(), where));
  }

  private static void fill(Path file, Filling filling) throws IOException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      OutputStream out = new BufferedOutputStream(Channels.newOutputStream(channel), BUFFER);
      filling.fill(out);
      out.flush();
      channel.force(true);
    }
  }

  private String explain(IOException e) {
    String said = String.valueOf(e.getMessage());
    String reason =
        e instanceof FileSystemException f && f.getReason() != null ? f.getReason() : said;
    String plain = reason.toLowerCase(Locale.ROOT);
    if (plain.contains("no space")
        || plain.contains("not enough space")
        || plain.contains("quota")) {
      return say.own("error.full", target.toString());
    }
    boolean elsewhere = plain.contains("another process") || plain.contains("text file busy");
    if (e instanceof AccessDeniedException || elsewhere) {
      return say.own("error.no-access", target.toString());
    }
    return say.own("error.other", target.toString(), reason);
  }
}
