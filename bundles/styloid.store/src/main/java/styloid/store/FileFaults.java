package styloid.store;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.sql.SQLException;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** Faults of the embedded engine and of the disk it writes to. */
final class FileFaults implements Faults {
  /** Less free space than this, and a failed write is put down to the full disk. */
  private static final long HARDLY_ANY_SPACE = 1_000_000;

  private final Path file;

  FileFaults(Path file) {
    this.file = file;
  }

  @Override
  public StoreException of(SQLException e) {
    int code = e instanceof SQLiteException s ? s.getResultCode().code & 0xFF : 0;
    if (code == SQLiteErrorCode.SQLITE_FULL.code || code == ioCode() && hardlyAnySpace()) {
      return diskFull(e);
    } else if (code == SQLiteErrorCode.SQLITE_READONLY.code
        || code == SQLiteErrorCode.SQLITE_CANTOPEN.code
        || code == SQLiteErrorCode.SQLITE_PERM.code) {
      return readOnly(e);
    } else if (code == SQLiteErrorCode.SQLITE_BUSY.code
        || code == SQLiteErrorCode.SQLITE_LOCKED.code) {
      return inUse(e);
    } else if (code == SQLiteErrorCode.SQLITE_CORRUPT.code
        || code == SQLiteErrorCode.SQLITE_NOTADB.code) {
      return damaged("cannot be read", e);
    } else if (code == SQLiteErrorCode.SQLITE_CONSTRAINT.code) {
      return new StoreException(
          StoreException.Cause.CONFLICT,
          "What was to be stored contradicts the records in " + file + ". Nothing was changed.",
          e);
    }
    return new StoreException(
        StoreException.Cause.OTHER,
        "The records in "
            + file
            + " could not be read or written ("
            + (e instanceof SQLiteException s ? s.getResultCode().name() : "no code")
            + "). Nothing was changed. Check the disk, then try again.",
        e);
  }

  private static int ioCode() {
    return SQLiteErrorCode.SQLITE_IOERR.code;
  }

  StoreException of(IOException e) {
    if (hardlyAnySpace()) {
      return diskFull(e);
    }
    Path above = existing();
    boolean closed = !Files.isDirectory(above) || !Files.isWritable(above);
    return closed || e instanceof AccessDeniedException ? readOnly(e) : unreachable(e);
  }

  StoreException of(ReadOnlyFileSystemException e) {
    return readOnly(e);
  }

  private StoreException unreachable(Exception e) {
    return new StoreException(
        StoreException.Cause.OTHER,
        "The folder " + file.getParent() + " could not be used. Check that it can be reached.",
        e);
  }

  StoreException inUse(Exception e) {
    return new StoreException(
        StoreException.Cause.IN_USE,
        "The records in "
            + file.getParent()
            + " are open in another window or program already. Go on there, or close it and start"
            + " again.",
        e);
  }

  @Override
  public StoreException newer(int found, int known) {
    return new StoreException(
        StoreException.Cause.NEWER_VERSION,
        "The records in %s were written by a newer version (layout %d, this one knows %d)."
                .formatted(file, found, known)
            + " Nothing was changed. Start the newer version.",
        null);
  }

  @Override
  public StoreException damaged(String how, Exception e) {
    return new StoreException(
        StoreException.Cause.DAMAGED,
        "The records in "
            + file
            + " are damaged: the file "
            + how
            + ". Leave it as it is, keep a copy, and put back the last good copy.",
        e);
  }

  @Override
  public StoreException notOpen() {
    return new StoreException(
        StoreException.Cause.OTHER, "The records in " + file + " are not open.", null);
  }

  private StoreException readOnly(Exception e) {
    return new StoreException(
        StoreException.Cause.READ_ONLY,
        "Nothing can be written in "
            + file.getParent()
            + ". Allow writing there, or choose another data folder.",
        e);
  }

  private StoreException diskFull(Exception e) {
    return new StoreException(
        StoreException.Cause.DISK_FULL,
        "The disk that holds "
            + file
            + " is full. What was to be stored is not stored. Free some space, then try again.",
        e);
  }

  private boolean hardlyAnySpace() {
    try {
      return Files.getFileStore(existing()).getUsableSpace() < HARDLY_ANY_SPACE;
    } catch (IOException e) {
      return false; // Not known: the fault is described by its own code.
    }
  }

  /** The nearest folder above the file that is there. */
  private Path existing() {
    Path folder = file.toAbsolutePath().getParent();
    while (folder.getParent() != null && !Files.exists(folder)) {
      folder = folder.getParent();
    }
    return folder;
  }
}
