package styloid.session;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import styloid.model.Entry;
import styloid.model.EvaluationRecord;

/**
 * The list of the files of a batch: SHA-256, the mark of the entries a file was made from, name. A
 * line is added as soon as a file stands, so that a batch that was cut off can go on.
 */
final class Manifest {
  static final String NAME = "manifest.txt";
  private static final Pattern LINE =
      Pattern.compile("([0-9a-f]{64}) {2}([0-9]+-[a-z]+-[0-9a-f-]+) {2}(.+)");

  private record Line(String sha, String entries) {}

  private final Path folder;
  private final TreeMap<String, Line> lines = new TreeMap<>();

  private Manifest(Path folder) {
    this.folder = folder;
  }

  /** What stands in a folder; lines that are no such line are dropped. */
  static Manifest in(Path folder) throws IOException {
    Manifest manifest = new Manifest(folder);
    Path file = folder.resolve(NAME);
    if (Files.exists(file)) {
      for (String line : Files.readAllLines(file)) {
        Matcher found = LINE.matcher(line);
        if (found.matches()) {
          manifest.lines.put(found.group(3), new Line(found.group(1), found.group(2)));
        }
      }
    }
    return manifest;
  }

  /**
   * Tells apart what an evaluation holds at different times: number of entries, state, last one.
   */
  static String entries(EvaluationRecord record) {
    List<Entry> entries = record.ledger().entries();
    String last = entries.isEmpty() ? "0" : entries.get(entries.size() - 1).id().toString();
    return entries.size() + "-" + record.evaluation().state().code() + "-" + last;
  }

  /** Whether the file stands as it was written, made from the same entries. */
  boolean holds(String name, String entries) throws IOException {
    Line line;
    synchronized (this) {
      line = lines.get(name);
    }
    Path file = folder.resolve(name);
    return line != null
        && line.entries().equals(entries)
        && Files.exists(file)
        && sha(file).equals(line.sha());
  }

  /** Takes in a file that was written. */
  void add(String name, String entries) {
    try {
      String sha = sha(folder.resolve(name));
      synchronized (this) {
        lines.put(name, new Line(sha, entries));
        Files.writeString(
            folder.resolve(NAME), line(name), StandardOpenOption.CREATE, StandardOpenOption.APPEND);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private String line(String name) {
    Line line = lines.get(name);
    return line.sha() + "  " + line.entries() + "  " + name + "\n";
  }

  /** Writes all lines anew, by name, each once. */
  synchronized void write() throws IOException {
    StringBuilder all = new StringBuilder();
    lines.keySet().forEach(name -> all.append(line(name)));
    Path unfinished = folder.resolve(NAME + ".part");
    Files.writeString(unfinished, all);
    Files.move(
        unfinished,
        folder.resolve(NAME),
        StandardCopyOption.ATOMIC_MOVE,
        StandardCopyOption.REPLACE_EXISTING);
  }

  static String sha(Path file) throws IOException {
    MessageDigest digest;
    try {
      digest = MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
    try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest)) {
      in.transferTo(OutputStream.nullOutputStream());
    }
    return HexFormat.of().formatHex(digest.digest());
  }
}
