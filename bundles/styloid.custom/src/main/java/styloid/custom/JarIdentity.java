package styloid.custom;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.jar.JarInputStream;
import java.util.jar.Manifest;

/**
 * A bundle file read into memory once: what is hashed, judged and run are the same bytes.
 *
 * @param imports its Import-Package header; empty when there is none
 */
record JarIdentity(String name, String version, String sha256, String imports, byte[] bytes) {
  static final long LARGEST = 64L * 1024 * 1024;

  /**
   * Reads a file.
   *
   * @throws IOException when it cannot be read, is too large or is no bundle
   */
  static JarIdentity of(Path file) throws IOException {
    if (Files.size(file) > LARGEST) {
      throw new IOException("is larger than " + LARGEST / 1024 / 1024 + " MB");
    }
    byte[] bytes = Files.readAllBytes(file);
    try (JarInputStream jar = new JarInputStream(new ByteArrayInputStream(bytes))) {
      Manifest manifest = jar.getManifest();
      String name = manifest == null ? null : header(manifest, "Bundle-SymbolicName");
      if (name == null) {
        throw new IOException("is no bundle: its manifest names no Bundle-SymbolicName");
      }
      String version = header(manifest, "Bundle-Version");
      String imports = manifest.getMainAttributes().getValue("Import-Package");
      return new JarIdentity(
          name,
          version == null ? "0.0.0" : version,
          sha256(bytes),
          imports == null ? "" : imports,
          bytes);
    }
  }

  /** A header without its directives. */
  private static String header(Manifest manifest, String key) {
    String value = manifest.getMainAttributes().getValue(key);
    return value == null ? null : value.split(";")[0].strip();
  }

  private static String sha256(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
