package styloid.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;

/**
 * The folder of the records: for its owner's eyes only where the file system can say so, and in the
 * hands of one program at a time.
 */
final class DataFolder {
  private static final String NATIVE_FOLDER = "org.sqlite.tmpdir";

  private final Path folder;
  private final FileFaults faults;
  private FileChannel channel;

  DataFolder(Path folder, FileFaults faults) {
    this.folder = folder;
    this.faults = faults;
  }

  /** Creates the folder and the file if need be and takes the lock. */
  void take(Path file) throws StoreException {
    try {
      Files.createDirectories(folder, mode("rwx------"));
      lock();
      if (!Files.exists(file)) {
        Files.createFile(file, mode("rw-------"));
      }
      nativeFolder();
    } catch (IOException e) {
      release();
      throw faults.of(e);
    } catch (ReadOnlyFileSystemException e) {
      release();
      throw faults.of(e);
    }
  }

  private void lock() throws IOException, StoreException {
    Path lock = folder.resolve("styloid.lock");
    if (!Files.exists(lock)) {
      createUnlessThere(lock);
    }
    channel = FileChannel.open(lock, StandardOpenOption.WRITE);
    FileLock taken;
    try {
      taken = channel.tryLock();
    } catch (OverlappingFileLockException e) {
      release();
      throw faults.inUse(e);
    }
    if (taken == null) {
      release();
      throw faults.inUse(null);
    }
  }

  private void createUnlessThere(Path lock) throws IOException {
    try {
      Files.createFile(lock, mode("rw-------"));
    } catch (FileAlreadyExistsException e) {
      // Another start was quicker; which of the two may go on is settled by the lock itself.
      return;
    }
  }

  /**
   * The driver unpacks its library before the first use in a program. It gets a folder of ours: the
   * system's temporary folder may forbid running code, and a killed program leaves its copy behind,
   * which only the holder of the lock can clear away safely.
   */
  private void nativeFolder() throws IOException {
    String chosen = System.getProperty(NATIVE_FOLDER);
    if (chosen != null && Files.isDirectory(Path.of(chosen))) {
      return;
    }
    Path own = Files.createDirectories(folder.resolve("native"), mode("rwx------"));
    try (DirectoryStream<Path> left = Files.newDirectoryStream(own, "sqlite-*")) {
      for (Path file : left) {
        Files.delete(file);
      }
    }
    System.setProperty(NATIVE_FOLDER, own.toString());
  }

  /** Lets go of the lock; the lock file stays, since removing it would race with a new start. */
  void release() {
    if (channel == null) {
      return;
    }
    try {
      channel.close();
    } catch (IOException e) {
      System.getLogger(DataFolder.class.getName())
          .log(System.Logger.Level.WARNING, "the lock file could not be closed", e);
    }
    channel = null;
  }

  private FileAttribute<?>[] mode(String permissions) {
    Path known = folder.toAbsolutePath().getRoot();
    boolean posix =
        Files.getFileAttributeView(known, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS)
            != null;
    return posix
        ? new FileAttribute<?>[] {
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(permissions))
        }
        : new FileAttribute<?>[0];
  }
}
