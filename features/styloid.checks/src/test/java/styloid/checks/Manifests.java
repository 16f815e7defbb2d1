package styloid.checks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.TreeSet;
import java.util.jar.Attributes;
import java.util.jar.JarFile;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a built jar says of itself. */
record Manifests(Attributes main) {
  private static final Pattern QUOTED = Pattern.compile("\"[^\"]*\"");

  static Manifests of(Path jar) {
    try (JarFile file = new JarFile(jar.toFile())) {
      return new Manifests(file.getManifest().getMainAttributes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Whether any imported package begins with {@code name}. */
  boolean imports(String name) {
    return packages("Import-Package").stream().anyMatch(p -> p.startsWith(name));
  }

  /** Package names of a header, sorted, without versions and attributes. */
  TreeSet<String> packages(String header) {
    TreeSet<String> names = new TreeSet<>();
    String value = main.getValue(header);
    if (value != null) {
      Matcher quoted = QUOTED.matcher(value);
      for (String clause : quoted.replaceAll("").split(",")) {
        names.add(clause.split(";")[0].strip());
      }
    }
    return names;
  }
}
