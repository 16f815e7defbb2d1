package styloid.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.zip.ZipEntry;
import org.apache.felix.scr.info.ScrInfo;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.BundleException;
import org.osgi.framework.Constants;
import org.osgi.service.component.runtime.ServiceComponentRuntime;
import org.osgi.util.function.Function;
import org.osgi.util.promise.Promise;

/** The component runtime as shipped, with components that do not work. */
class ComponentsTest {
  private static final String DESCRIPTION =
      """
      <scr:component xmlns:scr="http://www.osgi.org/xmlns/scr/v1.3.0" name="c" immediate="true">
        <implementation class="%s"/>
        %s
      </scr:component>
      """;

  /** A component whose making fails. */
  public static final class Broken {
    public Broken() {
      throw new IllegalStateException("no room");
    }
  }

  @TempDir private Path temp;
  private Container container;

  @BeforeEach
  void start() throws BundleException, URISyntaxException {
    container = Container.start(temp.resolve("storage"));
    for (Class<?> one :
        List.of(Function.class, Promise.class, ServiceComponentRuntime.class, ScrInfo.class)) {
      Path jar = Path.of(one.getProtectionDomain().getCodeSource().getLocation().toURI());
      container.startAll(jar.getParent(), List.of(jar.getFileName().toString()));
    }
  }

  @AfterEach
  void stop() {
    container.stop(Duration.ofSeconds(20));
  }

  private void component(String type, String inside) throws IOException {
    Manifest manifest = new Manifest();
    Attributes headers = manifest.getMainAttributes();
    headers.put(Attributes.Name.MANIFEST_VERSION, "1.0");
    headers.putValue(Constants.BUNDLE_MANIFESTVERSION, "2");
    headers.putValue(Constants.BUNDLE_SYMBOLICNAME, "test");
    headers.putValue("Service-Component", "c.xml");
    try (OutputStream file = Files.newOutputStream(temp.resolve("test.jar"));
        JarOutputStream jar = new JarOutputStream(file, manifest)) {
      jar.putNextEntry(new ZipEntry("c.xml"));
      jar.write(DESCRIPTION.formatted(type, inside).getBytes(StandardCharsets.UTF_8));
      String broken = Broken.class.getName().replace('.', '/') + ".class";
      jar.putNextEntry(new ZipEntry(broken));
      try (InputStream bytes = Broken.class.getClassLoader().getResourceAsStream(broken)) {
        bytes.transferTo(jar);
      }
    }
    container.startAll(temp, List.of("test.jar"));
  }

  @Test
  void noComponentNoFault() {
    assertEquals(List.of(), container.allFaults());
  }

  @Test
  void aWorkingComponentIsNoFault() throws IOException {
    component("java.lang.Object", "");
    assertEquals(List.of(), container.allFaults());
  }

  @Test
  void aMissingServiceIsNamedWithItsTarget() throws IOException {
    component(
        "java.lang.Object",
        "<reference name=\"r\" interface=\"java.nio.file.Path\" target=\"(styloid.role=x)\"/>");
    assertEquals(
        List.of(Fault.waitsFor("java.lang.Object", "java.nio.file.Path (styloid.role=x)")),
        container.allFaults());
  }

  @Test
  void aComponentWhoseClassDoesNotLoadIsNamed() throws IOException {
    component("not.There", "");
    assertEquals(List.of(Fault.cannotBeMade("not.There")), container.allFaults());
  }

  @Test
  void aComponentThatFailsTellsWhy() throws IOException {
    component(Broken.class.getName(), "");
    List<Fault> faults = container.allFaults();
    assertEquals(List.of(Fault.Kind.FAILED), faults.stream().map(Fault::kind).toList());
    assertEquals(Broken.class.getName(), faults.get(0).part());
    assertEquals("java.lang.IllegalStateException: no room", faults.get(0).detail());
  }
}
