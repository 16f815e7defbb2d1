package styloid.launcher;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.stream.Stream;

/** The bundles to start, as the build wrote them down from the feature file. */
final class StartList {
  private StartList() {}

  /**
   * File names in the order to start, of all lists of a folder, each once.
   *
   * @throws NoSuchFileException when there is no list
   */
  static List<String> read(Path folder) throws IOException {
    LinkedHashSet<String> names = new LinkedHashSet<>();
    List<Path> lists;
    try (Stream<Path> files = Files.list(folder)) {
      lists = files.filter(f -> f.toString().endsWith(".list")).sorted().toList();
    }
    if (lists.isEmpty()) {
      throw new NoSuchFileException(folder.resolve("*.list").toString());
    }
    for (Path list : lists) {
      names.addAll(parse(Files.readAllLines(list)));
    }
    return List.copyOf(names);
  }

  /** Blank lines and those that begin with # say nothing. */
  static List<String> parse(List<String> lines) {
    ArrayList<String> names = new ArrayList<>();
    for (String line : lines) {
      String name = line.strip();
      if (!name.isEmpty() && !name.startsWith("#")) {
        names.add(name);
      }
    }
    return names;
  }
}
