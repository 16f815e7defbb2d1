package styloid.store;

import java.io.File;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import org.sqlite.JDBC;
import styloid.model.Entry;

/** Starts a main class of the tests in a Java of its own, with nothing but what the store needs. */
final class ChildJvm {
  private ChildJvm() {}

  static Process start(Class<?> main, String... args) throws IOException {
    ArrayList<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(
        List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xshare:auto", "-Xmx64m"));
    command.addAll(List.of("-cp", classPath(main), main.getName()));
    command.addAll(List.of(args));
    return new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
  }

  private static String classPath(Class<?> main) {
    LinkedHashSet<String> places = new LinkedHashSet<>();
    for (Class<?> part : List.of(main, PatientStore.class, Entry.class, JDBC.class)) {
      try {
        places.add(
            Path.of(part.getProtectionDomain().getCodeSource().getLocation().toURI()).toString());
      } catch (URISyntaxException e) {
        throw new IllegalStateException(e);
      }
    }
    return String.join(File.pathSeparator, places);
  }
}
