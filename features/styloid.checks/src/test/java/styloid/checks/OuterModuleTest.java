package styloid.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.ServiceEvent;
import styloid.checks.faulty.Plain;

/** Bundles from outside in the assembled suite: approved once, live, and gone without a trace. */
class OuterModuleTest {
  private static final String MODULE = "styloid.spi.TestModule";
  private static final String NOTICE = "styloid.spi.ModuleNotice";

  @TempDir Path data;
  @TempDir Path elsewhere;

  private Path folder() throws IOException {
    return Files.createDirectories(data.resolve("modules"));
  }

  private void drop(Path jar) throws IOException {
    Path unfinished = Files.copy(jar, folder().resolve(".jar"));
    Files.move(unfinished, folder().resolve("module.jar"), StandardCopyOption.REPLACE_EXISTING);
  }

  private static String sha256(SuiteUnderTest suite, Path jar) throws Exception {
    SuiteUnderTest.Ran asked = suite.run("approve", jar.toString());
    assertEquals(0, asked.code(), asked::err);
    assertTrue(asked.out().contains("trusted code"), asked::out);
    Matcher hash = Pattern.compile("[0-9a-f]{64}").matcher(asked.out());
    assertTrue(hash.find(), asked::out);
    return hash.group();
  }

  @Test
  void runsOnceApprovedAsksAgainWhenChangedAndGoesWhenRemoved() throws Exception {
    Path jar =
        Files.move(FaultyBundle.pack(elsewhere, Plain.class), elsewhere.resolve("first.jar"));
    try (SuiteUnderTest suite = SuiteUnderTest.start(data)) {
      suite.until(NOTICE, ServiceEvent.REGISTERED, () -> drop(jar));
      SuiteUnderTest.Ran waits = suite.eventually(r -> r.code() == 4, "modules");
      assertFalse(waits.out().contains("faulty-plain"), "runs without approval");
      assertTrue(waits.err().contains("waits for an administrator"), waits::err);

      Path there = folder().resolve("module.jar");
      String hash = sha256(suite, there);
      assertEquals(
          1, suite.run("approve", there.toString(), "--sha256", "0" + hash.substring(1)).code());
      suite.until(
          MODULE,
          ServiceEvent.REGISTERED,
          () -> assertEquals(0, suite.run("approve", there.toString(), "--sha256", hash).code()));
      suite.eventually(r -> r.out().contains("faulty-plain") && r.code() == 0, "modules");

      Path changed = FaultyBundle.pack(elsewhere, Plain.class, "styloid.model.norm");
      suite.until(NOTICE, ServiceEvent.REGISTERED, () -> drop(changed));
      SuiteUnderTest.Ran again =
          suite.eventually(r -> !r.out().contains("faulty-plain") && r.code() == 4, "modules");
      assertTrue(again.err().contains("waits for an administrator"), again::err);

      suite.until(MODULE, ServiceEvent.REGISTERED, () -> drop(jar));
      suite.until(MODULE, ServiceEvent.UNREGISTERING, () -> Files.delete(there));
      SuiteUnderTest.Ran gone = suite.eventually(r -> !r.out().contains("faulty-plain"), "modules");
      assertTrue(gone.out().contains("Grip and pinch"), "something else went too");
      assertEquals(0, gone.code(), gone::err);
    }
    drop(jar);
    try (SuiteUnderTest suite = SuiteUnderTest.start(data)) {
      suite.eventually(r -> r.out().contains("faulty-plain"), "modules");
    }
  }

  @Test
  void builtForAnotherVersionOrNoBundleAtAllIsRefusedWithTheReason() throws Exception {
    Path jar = FaultyBundle.pack(elsewhere, Plain.class, "styloid.model.norm;version=\"[2,3)\"");
    try (SuiteUnderTest suite = SuiteUnderTest.start(data)) {
      suite.run("approve", jar.toString(), "--sha256", sha256(suite, jar));
      suite.until(NOTICE, ServiceEvent.REGISTERED, () -> drop(jar));
      suite.eventually(
          r -> r.err().contains("was built for styloid.model.norm [2,3); this suite has 1."),
          "modules");
      suite.until(
          NOTICE,
          ServiceEvent.REGISTERED,
          () -> Files.writeString(folder().resolve("text.jar"), "not a jar"));
      suite.eventually(r -> r.err().contains("text.jar"), "modules");
    }
  }

  /** What the how-to tells to copy compiles against model and contract alone, and runs. */
  @Test
  void theTemplateBuildsAndRuns() throws Exception {
    Path template = Project.ROOT.resolve("docs/module-template");
    Path classes = Files.createDirectories(elsewhere.resolve("classes"));
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    ArrayList<String> words =
        new ArrayList<>(
            List.of(
                "--release",
                "17",
                "-proc:none",
                "-Xlint:all,-processing,-classfile,-path",
                "-Werror",
                "-d",
                classes.toString(),
                "-cp",
                Stream.of("styloid.model", "styloid.spi")
                        .map(bundle -> Project.classes(bundle).toString())
                        .reduce((a, b) -> a + java.io.File.pathSeparator + b)
                        .orElseThrow()
                    + java.io.File.pathSeparator
                    + System.getProperty("java.class.path")));
    Project.files(template.resolve("src/main/java"), ".java").forEach(f -> words.add(f.toString()));
    assertEquals(0, compiler.run(null, null, null, words.toArray(String[]::new)));
    Path resources = template.resolve("src/main/resources");
    for (Path file : Project.files(resources, ".properties")) {
      Files.copy(file, classes.resolve(resources.relativize(file)));
    }
    Path jar = FaultyBundle.packFolder(elsewhere, "clinic.webspan.WebSpan", classes);
    try (SuiteUnderTest suite = SuiteUnderTest.start(data)) {
      suite.run("approve", jar.toString(), "--sha256", sha256(suite, jar));
      suite.until(MODULE, ServiceEvent.REGISTERED, () -> drop(jar));
      suite.eventually(
          r -> r.out().contains("Thumb-web span, clinic (clinic-web-span 1.0)") && r.code() == 0,
          "modules");
    }
  }
}
