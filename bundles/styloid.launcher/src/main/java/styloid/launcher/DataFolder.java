package styloid.launcher;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Locale;
import java.util.Map;

/** Where the suite keeps its data. */
final class DataFolder {
  private DataFolder() {}

  /**
   * The folder: what {@code --data} says, else STYLOID_DATA, else the platform's place for user
   * data. The demo clinic lives in a folder of its own inside it.
   *
   * @param os the system property {@code os.name}
   * @param userHome the system property {@code user.home}
   */
  static Path choose(Arguments asked, Map<String, String> env, String os, String userHome) {
    Path folder = asked.data().orElseGet(() -> standard(env, os, Path.of(userHome)));
    return (asked.demo() ? folder.resolve("demo") : folder).toAbsolutePath().normalize();
  }

  private static Path standard(Map<String, String> env, String os, Path userHome) {
    String named = env.getOrDefault("STYLOID_DATA", "");
    if (!named.isBlank()) {
      return Path.of(named);
    }
    String system = os.toLowerCase(Locale.ROOT);
    if (system.startsWith("windows")) {
      String roaming = env.getOrDefault("APPDATA", "");
      return (roaming.isBlank() ? userHome.resolve("AppData").resolve("Roaming") : Path.of(roaming))
          .resolve("Styloid");
    }
    if (system.startsWith("mac")) {
      return userHome.resolve("Library").resolve("Application Support").resolve("Styloid");
    }
    String shared = env.getOrDefault("XDG_DATA_HOME", "");
    // The XDG base directory specification tells to ignore a relative path here.
    boolean usable = !shared.isBlank() && Path.of(shared).isAbsolute();
    return (usable ? Path.of(shared) : userHome.resolve(".local").resolve("share"))
        .resolve("styloid");
  }

  /** Makes the folder where it is missing, for its owner's eyes only where the system can. */
  static void create(Path folder) throws IOException {
    if (Files.isDirectory(folder)) {
      return;
    }
    if (folder.getParent() != null) {
      Files.createDirectories(folder.getParent());
    }
    if (FileSystems.getDefault().supportedFileAttributeViews().contains("posix")) {
      Files.createDirectory(
          folder,
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------")));
    } else {
      Files.createDirectory(folder);
    }
  }
}
