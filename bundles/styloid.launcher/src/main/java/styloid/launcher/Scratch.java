package styloid.launcher;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.stream.Stream;

/**
 * A folder for the framework's own files of one run, inside the data folder, never holding anything
 * of a patient. Made afresh at each start, since leftovers of an older version are what breaks such
 * programs; a lock tells those in use from those a crash left behind.
 */
final class Scratch implements AutoCloseable {
  private static final String PREFIX = "run-";

  private final Path folder;
  private final FileChannel channel;

  private Scratch(Path folder, FileChannel channel) {
    this.folder = folder;
    this.channel = channel;
  }

  static Scratch in(Path data) throws IOException {
    try (DirectoryStream<Path> left = Files.newDirectoryStream(data, PREFIX + "*")) {
      for (Path folder : left) {
        deleteUnlessInUse(folder);
      }
    }
    Path folder = Files.createTempDirectory(data, PREFIX);
    FileChannel channel =
        FileChannel.open(lockOf(folder), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    FileLock lock = channel.tryLock();
    if (lock == null) {
      throw new IOException(folder + " is locked by another program");
    }
    return new Scratch(folder, channel);
  }

  private static Path lockOf(Path folder) {
    return folder.resolve("lock");
  }

  private static void deleteUnlessInUse(Path folder) throws IOException {
    if (!Files.exists(lockOf(folder))) {
      // another program is making it at this moment, or a deletion was cut short
      return;
    }
    try (FileChannel channel = FileChannel.open(lockOf(folder), StandardOpenOption.WRITE);
        FileLock lock = channel.tryLock()) {
      if (lock == null) {
        return;
      }
    } catch (OverlappingFileLockException e) {
      return;
    }
    delete(folder);
  }

  /** Where the framework may keep its bundles. */
  Path bundles() {
    return folder.resolve("bundles");
  }

  @Override
  public void close() throws IOException {
    channel.close();
    delete(folder);
  }

  /** The lock file goes last, so that a deletion cut short is finished at the next start. */
  private static void delete(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      Comparator<Path> lockLast = Comparator.comparing(f -> f.equals(lockOf(folder)));
      for (Path file :
          files
              .filter(f -> !f.equals(folder))
              .sorted(lockLast.thenComparing(Comparator.reverseOrder()))
              .toList()) {
        Files.delete(file);
      }
    }
    Files.delete(folder);
  }
}
