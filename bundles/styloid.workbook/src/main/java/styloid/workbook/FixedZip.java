package styloid.workbook;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** Packs an archive anew with one fixed time for all, so that equal contents give equal bytes. */
final class FixedZip {
  private static final LocalDateTime TIME = LocalDateTime.of(2000, 1, 1, 0, 0);

  /** A little larger than the usual 6, in half the time. */
  private static final int LEVEL = 3;

  private FixedZip() {}

  /** The archive with these parts put in place of its own. */
  static byte[] repack(byte[] archive, Map<String, byte[]> parts) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream(archive.length / 4 + 1024);
    try (ZipInputStream from = new ZipInputStream(new ByteArrayInputStream(archive));
        ZipOutputStream to = new ZipOutputStream(out)) {
      to.setLevel(LEVEL);
      for (ZipEntry entry = from.getNextEntry(); entry != null; entry = from.getNextEntry()) {
        ZipEntry fixed = new ZipEntry(entry.getName());
        fixed.setTimeLocal(TIME);
        to.putNextEntry(fixed);
        byte[] part = parts.get(entry.getName());
        if (part == null) {
          from.transferTo(to);
        } else {
          to.write(part);
        }
        to.closeEntry();
      }
    }
    return out.toByteArray();
  }
}
