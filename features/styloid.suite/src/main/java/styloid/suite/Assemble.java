package styloid.suite;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.apache.felix.feature.impl.FeatureServiceImpl;
import org.osgi.service.feature.Feature;
import org.osgi.service.feature.FeatureBundle;
import org.osgi.service.feature.ID;

/** Makes the runnable folder of the suite from a feature file. Run by the build. */
public final class Assemble {
  private static final String OWN_GROUP = "styloid";
  private static final String LAUNCHER = "styloid.launcher";
  private static final String FRAMEWORK = "org.apache.felix.framework-";
  private static final String WINDOW_LIBRARY = "javafx-";

  private final Path pool;
  private final Path ownBundles;
  private final Path target;

  private Assemble(Path pool, Path ownBundles, Path target) {
    this.pool = pool;
    this.ownBundles = ownBundles;
    this.target = target;
  }

  /**
   * Assembles.
   *
   * @param args feature file with versions filled in; folder of third-party jars; folder of the
   *     bundle projects; folder of files copied as they are; folder of the demo clinic; folder to
   *     make
   */
  public static void main(String[] args) throws IOException {
    Path target = Path.of(args[5]);
    deleteTree(target);
    new Assemble(Path.of(args[1]), Path.of(args[2]), target)
        .assemble(Path.of(args[0]), Path.of(args[3]), Path.of(args[4]));
  }

  private void assemble(Path featureFile, Path scripts, Path demo) throws IOException {
    Feature feature;
    try (Reader in = Files.newBufferedReader(featureFile)) {
      feature = new FeatureServiceImpl().readFeature(in);
    }
    ArrayList<String> startList = new ArrayList<>();
    startList.add("# " + feature.getID() + ": started from top to bottom");
    for (FeatureBundle bundle : feature.getBundles()) {
      startList.add(place(bundle.getID(), feature).getFileName().toString());
    }
    Path list = target.resolve("conf").resolve(feature.getID().getArtifactId() + ".list");
    Files.createDirectories(list.getParent());
    Files.write(list, startList);
    libraries(feature.getID().getVersion());
    copyTree(scripts, target);
    executable(target.resolve("bin").resolve("styloid"));
    copyTree(demo, target.resolve("demo"));
  }

  private Path place(ID id, Feature feature) throws IOException {
    Path jar =
        id.getGroupId().equals(OWN_GROUP)
            ? ownJar(id.getArtifactId(), id.getVersion())
            : pool.resolve(id.getArtifactId() + "-" + id.getVersion() + ".jar");
    return copy(jar, target.resolve("bundles"), feature.getID() + " lists " + id);
  }

  private Path ownJar(String artifact, String version) {
    return ownBundles
        .resolve(artifact)
        .resolve("target")
        .resolve(artifact + "-" + version + ".jar");
  }

  /** Launcher and framework go on the class path, the window library on the module path. */
  private void libraries(String version) throws IOException {
    Path lib = target.resolve("lib");
    copy(ownJar(LAUNCHER, version), lib, "the suite needs its launcher");
    int frameworks = 0;
    int windows = 0;
    for (Path jar : list(pool)) {
      String name = jar.getFileName().toString();
      if (name.startsWith(FRAMEWORK)) {
        frameworks++;
        copy(jar, lib, name);
      } else if (name.startsWith(WINDOW_LIBRARY) && hasClasses(name)) {
        windows++;
        copy(jar, lib.resolve("fx"), name);
      }
    }
    if (frameworks != 1 || windows == 0) {
      throw new NoSuchFileException(
          pool.toString(), null, "one " + FRAMEWORK + "*.jar and window libraries are needed");
    }
  }

  /**
   * Jars without a platform behind their version are empty shells that only point to the others.
   */
  private static boolean hasClasses(String jarName) {
    return jarName.matches(".*-[0-9][0-9.]*-[a-z].*\\.jar");
  }

  private static Path copy(Path jar, Path folder, String why) throws IOException {
    if (!Files.isRegularFile(jar)) {
      throw new NoSuchFileException(
          jar.toString(),
          null,
          why + ", but the jar is not built. Build from the root: mvn package");
    }
    Files.createDirectories(folder);
    return Files.copy(jar, folder.resolve(jar.getFileName()), StandardCopyOption.REPLACE_EXISTING);
  }

  private static void copyTree(Path from, Path to) throws IOException {
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : (Iterable<Path>) files::iterator) {
        Path there = to.resolve(from.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(there);
        } else {
          Files.copy(file, there, StandardCopyOption.REPLACE_EXISTING);
        }
      }
    }
  }

  private static void executable(Path script) throws IOException {
    if (!script.toFile().setExecutable(true, false)) {
      throw new IOException(script + " cannot be made executable");
    }
  }

  private static List<Path> list(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.sorted().toList();
    }
  }

  private static void deleteTree(Path folder) throws IOException {
    if (Files.exists(folder)) {
      try (Stream<Path> files = Files.walk(folder)) {
        for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(file);
        }
      }
    }
  }
}
