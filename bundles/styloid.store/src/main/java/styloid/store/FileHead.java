package styloid.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/**
 * What the first 100 bytes of a database file say, read without the engine, so that a file which is
 * not for us is not touched at all. Offsets: SQLite, "Database File Format", section 1.3.
 */
record FileHead(boolean empty, boolean sqlite, int version, int application) {
  /** The letters STYL. */
  static final int APPLICATION = 0x5354594C;

  private static final byte[] MAGIC = "SQLite format 3\0".getBytes(StandardCharsets.US_ASCII);
  private static final int LENGTH = 100;

  static FileHead of(Path file) throws IOException {
    byte[] head;
    try (InputStream in = Files.newInputStream(file)) {
      head = in.readNBytes(LENGTH);
    }
    if (head.length == 0) {
      return new FileHead(true, false, 0, 0);
    }
    if (head.length < LENGTH || !Arrays.equals(head, 0, MAGIC.length, MAGIC, 0, MAGIC.length)) {
      return new FileHead(false, false, 0, 0);
    }
    ByteBuffer bytes = ByteBuffer.wrap(head);
    return new FileHead(false, true, bytes.getInt(60), bytes.getInt(68));
  }
}
