package styloid.checks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Where things lie in the project that is being checked. */
public final class Project {
  public static final Path ROOT = Path.of("").toAbsolutePath().getParent().getParent();

  private Project() {}

  /** Names of all bundle folders that hold a build file. */
  static List<String> bundles() {
    return list(ROOT.resolve("bundles")).stream()
        .filter(folder -> Files.exists(folder.resolve("pom.xml")))
        .map(folder -> folder.getFileName().toString())
        .toList();
  }

  /** The bundles that are shipped as such: neither the launcher nor the test kit. */
  static List<String> shippedBundles() {
    return bundles().stream()
        .filter(b -> !b.equals("styloid.launcher") && !b.equals("styloid.testkit"))
        .toList();
  }

  static Path classes(String bundle) {
    return ROOT.resolve("bundles").resolve(bundle).resolve("target/classes");
  }

  /** The assembled suite. */
  public static Path suite() {
    return ROOT.resolve("features/styloid.suite/target/styloid");
  }

  public static List<Path> list(Path folder) {
    try (Stream<Path> entries = Files.list(folder)) {
      return entries.sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** All files below a folder with this ending; none when there is no such folder. */
  public static List<Path> files(Path folder, String ending) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> entries = Files.walk(folder)) {
      return entries.filter(f -> f.toString().endsWith(ending)).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String text(Path file) {
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
