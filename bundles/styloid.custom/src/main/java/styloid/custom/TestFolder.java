package styloid.custom;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The clinic's folder of declared tests. It is looked at again and again, since a watch by the
 * system misses network drives; a file counts once it has stayed the same for one look, so that one
 * under way is not read half.
 */
final class TestFolder {
  private static final System.Logger LOG = System.getLogger(TestFolder.class.getName());

  private final Path folder;
  private final Shelf shelf;
  private FolderState seen = FolderState.EMPTY;
  private FolderState taken = FolderState.EMPTY;

  TestFolder(Path folder, Shelf shelf) {
    this.folder = folder;
    this.shelf = shelf;
  }

  /** Takes in everything as it is now. */
  void takeAll() {
    look();
    look();
  }

  /** One look; takes in what changed before the last one and has been the same since. */
  void look() {
    try {
      FolderState now = FolderState.of(folder, ".json", ".csv");
      if (now.equals(seen) && !now.equals(taken)) {
        take(now);
      }
      seen = now;
    } catch (IOException e) {
      LOG.log(System.Logger.Level.WARNING, "The folder of tests cannot be looked at", e);
    }
  }

  private void take(FolderState now) {
    FolderState before = taken;
    taken = now;
    boolean tables = !tables(before).equals(tables(now));
    for (String file : before.files().keySet()) {
      if (file.endsWith(".json") && !now.files().containsKey(file)) {
        shelf.remove(file);
      }
    }
    now.files()
        .forEach(
            (file, stamp) -> {
              boolean changed = !stamp.equals(before.files().get(file));
              if (file.endsWith(".json") && (changed || tables)) {
                shelf.put(file, text(file), this::text);
              }
            });
  }

  private static java.util.Map<String, FolderState.Stamp> tables(FolderState state) {
    java.util.TreeMap<String, FolderState.Stamp> tables = new java.util.TreeMap<>(state.files());
    tables.keySet().removeIf(file -> !file.endsWith(".csv"));
    return tables;
  }

  private Optional<String> text(String file) {
    return text(folder.resolve(file));
  }

  /** Text of a file of bounded length; empty when it is not there or no UTF-8 text. */
  static Optional<String> text(Path file) {
    try {
      if (!Files.isRegularFile(file) || Files.size(file) > 4L * DeclaredFile.LONGEST) {
        return Optional.empty();
      }
      return Optional.of(Files.readString(file, StandardCharsets.UTF_8));
    } catch (CharacterCodingException e) {
      return Optional.empty();
    } catch (IOException e) {
      LOG.log(System.Logger.Level.DEBUG, file.toString(), e);
      return Optional.empty();
    }
  }
}
