package styloid.checks;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.zip.ZipEntry;

/** Packs a faulty module class as a bundle. */
final class FaultyBundle {
  private FaultyBundle() {}

  /**
   * A bundle that offers one component as a test module.
   *
   * @param alsoImports packages more to import; one that nobody exports keeps it from resolving
   */
  static Path pack(Path folder, Class<?> module, String... alsoImports) throws IOException {
    Manifest manifest = manifest(module.getSimpleName(), alsoImports);
    Path jar = folder.resolve(module.getSimpleName() + ".jar");
    try (OutputStream out = Files.newOutputStream(jar);
        JarOutputStream zip = new JarOutputStream(out, manifest)) {
      put(zip, "OSGI-INF/module.xml", component(module.getName()));
      for (Class<?> one : new Class<?>[] {module, module.getSuperclass()}) {
        if (!one.equals(Object.class)) {
          put(zip, one.getName().replace('.', '/') + ".class", code(one));
        }
      }
    }
    return jar;
  }

  /** A bundle of all files below a folder that offers one of their classes as a test module. */
  static Path packFolder(Path folder, String module, Path files) throws IOException {
    Path jar = folder.resolve("packed.jar");
    try (OutputStream out = Files.newOutputStream(jar);
        JarOutputStream zip = new JarOutputStream(out, manifest(module))) {
      put(zip, "OSGI-INF/module.xml", component(module));
      for (Path file : Project.files(files, "")) {
        if (Files.isRegularFile(file)) {
          put(zip, files.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
        }
      }
    }
    return jar;
  }

  private static Manifest manifest(String name, String... alsoImports) {
    Manifest manifest = new Manifest();
    Attributes main = manifest.getMainAttributes();
    main.put(Attributes.Name.MANIFEST_VERSION, "1.0");
    main.putValue("Bundle-ManifestVersion", "2");
    main.putValue("Bundle-SymbolicName", "faulty." + name);
    main.putValue("Bundle-Version", "1.0.0");
    String more = alsoImports.length == 0 ? "" : "," + String.join(",", alsoImports);
    main.putValue("Import-Package", "styloid.model,styloid.spi" + more);
    main.putValue("Service-Component", "OSGI-INF/module.xml");
    return manifest;
  }

  private static void put(JarOutputStream zip, String name, byte[] bytes) throws IOException {
    zip.putNextEntry(new ZipEntry(name));
    zip.write(bytes);
    zip.closeEntry();
  }

  private static byte[] code(Class<?> type) throws IOException {
    try (InputStream in = type.getResourceAsStream(type.getSimpleName() + ".class")) {
      return in.readAllBytes();
    }
  }

  private static byte[] component(String module) {
    String text =
        "<scr:component xmlns:scr='http://www.osgi.org/xmlns/scr/v1.3.0' name='"
            + module
            + "'><implementation class='"
            + module
            + "'/><service><provide interface='styloid.spi.TestModule'/></service></scr:component>";
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
