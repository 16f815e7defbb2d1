package styloid.custom;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.TreeSet;

/**
 * What an administrator approved: a text file with a line {@code name version sha256} for each.
 * Read anew each time, so that an approval by command reaches a running window.
 */
final class Approvals {
  private static final String FILE = "approved.txt";

  private final Path file;

  Approvals(Path folder) {
    file = folder.resolve(FILE);
  }

  private static String line(String name, String version, String sha256) {
    return name + " " + version + " " + sha256;
  }

  boolean holds(JarIdentity jar) throws IOException {
    return lines().contains(line(jar.name(), jar.version(), jar.sha256()));
  }

  private List<String> lines() throws IOException {
    return Files.isRegularFile(file) ? Files.readAllLines(file) : List.of();
  }

  /** Adds one, replacing earlier ones of the same name. */
  synchronized void add(String name, String version, String sha256) throws IOException {
    TreeSet<String> all = new TreeSet<>(lines());
    all.removeIf(line -> line.startsWith(name + " ") || line.isBlank());
    all.add(line(name, version, sha256));
    Files.createDirectories(file.getParent());
    Path unfinished = Files.createTempFile(file.getParent(), ".approved", ".part");
    Files.write(unfinished, all);
    Files.move(
        unfinished, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }
}
