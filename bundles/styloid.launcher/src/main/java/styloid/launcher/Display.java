package styloid.launcher;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/** Whether there is a display, and what to say when there is none. */
final class Display {
  private Display() {}

  /**
   * Whether a window can be expected to open. Only systems that name their display in the
   * environment can be asked; others are taken to have one.
   */
  static boolean expected(Map<String, String> env, String os) {
    String system = os.toLowerCase(Locale.ROOT);
    return system.startsWith("windows")
        || system.startsWith("mac")
        || !env.getOrDefault("DISPLAY", "").isBlank();
  }

  /**
   * One line that names the command that does the job without a window.
   *
   * @param workingFolder paths below it are given from there on
   */
  static String none(Words words, Path home, Path workingFolder) {
    return words.text(
        "no-display",
        shortest(home.resolve("bin").resolve("styloid"), workingFolder),
        shortest(home.resolve("demo"), workingFolder));
  }

  private static String shortest(Path path, Path workingFolder) {
    Path shown = path.startsWith(workingFolder) ? workingFolder.relativize(path) : path;
    String text = shown.toString();
    return text.contains(" ") ? '"' + text + '"' : text;
  }
}
