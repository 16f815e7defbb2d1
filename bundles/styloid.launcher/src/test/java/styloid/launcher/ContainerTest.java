package styloid.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleException;
import org.osgi.framework.Constants;

class ContainerTest {
  @TempDir private Path temp;
  private Container container;

  @BeforeEach
  void start() throws BundleException {
    container = Container.start(temp.resolve("storage"));
  }

  @AfterEach
  void stop() {
    assertTrue(container.stop(Duration.ofSeconds(20)));
  }

  private String bundle(String name, String header, String value) throws IOException {
    Manifest manifest = new Manifest();
    Attributes headers = manifest.getMainAttributes();
    headers.put(Attributes.Name.MANIFEST_VERSION, "1.0");
    headers.putValue(Constants.BUNDLE_MANIFESTVERSION, "2");
    headers.putValue(Constants.BUNDLE_SYMBOLICNAME, name);
    headers.putValue(header, value);
    Path jar = temp.resolve("with a blank").resolve(name + ".jar");
    Files.createDirectories(jar.getParent());
    new JarOutputStream(Files.newOutputStream(jar), manifest).close();
    return jar.getFileName().toString();
  }

  private int state(String name) {
    for (Bundle bundle : container.context().getBundles()) {
      if (name.equals(bundle.getSymbolicName())) {
        return bundle.getState();
      }
    }
    return 0;
  }

  @Test
  void aBundleThatDoesNotResolveLeavesTheOthersAlone() throws IOException {
    List<String> files =
        List.of(
            bundle("broken", Constants.IMPORT_PACKAGE, "nobody.has.this"),
            "absent.jar",
            bundle("activator", Constants.BUNDLE_ACTIVATOR, "not.There"),
            bundle("sound", Constants.BUNDLE_NAME, "sound"));
    container.startAll(temp.resolve("with a blank"), files);
    assertEquals(Bundle.ACTIVE, state("sound"));
    assertEquals(
        List.of(Fault.Kind.FILE_MISSING, Fault.Kind.NEEDS_PACKAGE, Fault.Kind.FAILED),
        container.bundleFaults().stream().map(Fault::kind).toList());
    assertEquals("nobody.has.this", container.bundleFaults().get(1).detail());
  }

  @Test
  void whatIsOfferedIsFoundUnderItsRoleAlone() {
    container.offer(String.class, "invented people", "clinic-note");
    assertEquals(Optional.of("invented people"), container.find(String.class, "clinic-note"));
    assertEquals(Optional.empty(), container.find(String.class, "command"));
  }

  @Test
  void withoutTheComponentRuntimeTheReportSaysSo() {
    List<Fault> faults = container.allFaults();
    assertEquals(1, faults.size());
    assertEquals(Fault.Kind.WAITS_FOR, faults.get(0).kind());
  }
}
