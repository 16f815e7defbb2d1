package styloid.custom;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Map;
import java.util.TreeMap;

/**
 * What lies in a folder, as far as it shows without reading files. A file replaced by renaming
 * another over it shows by its file key even where length and time are the same.
 */
record FolderState(Map<String, Stamp> files) {
  static final FolderState EMPTY = new FolderState(Map.of());
  private static final int MOST_FILES = 1000;

  /** How a changed file is told from the one before. */
  record Stamp(long modifiedNanos, long length, String key) {}

  /** The files with one of these endings; none when there is no such folder. */
  static FolderState of(Path folder, String... endings) throws IOException {
    if (!Files.isDirectory(folder)) {
      return EMPTY;
    }
    TreeMap<String, Stamp> found = new TreeMap<>();
    try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder)) {
      for (Path entry : entries) {
        String name = entry.getFileName().toString();
        if (found.size() < MOST_FILES && !name.startsWith(".") && ends(name, endings)) {
          stamp(entry, name, found);
        }
      }
    }
    return new FolderState(found);
  }

  private static boolean ends(String name, String... endings) {
    for (String ending : endings) {
      if (name.endsWith(ending)) {
        return true;
      }
    }
    return false;
  }

  private static void stamp(Path entry, String name, Map<String, Stamp> into) throws IOException {
    try {
      BasicFileAttributes facts = Files.readAttributes(entry, BasicFileAttributes.class);
      if (facts.isRegularFile()) {
        long modified = facts.lastModifiedTime().to(java.util.concurrent.TimeUnit.NANOSECONDS);
        into.put(name, new Stamp(modified, facts.size(), String.valueOf(facts.fileKey())));
      }
    } catch (NoSuchFileException e) {
      // gone between being listed and being looked at: the next look will not list it
      System.getLogger(FolderState.class.getName()).log(System.Logger.Level.DEBUG, name, e);
    }
  }
}
