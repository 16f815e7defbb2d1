package styloid.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * LibreOffice without a window, as a judge from outside. It is asked where it is installed; where
 * the environment says CI it must be.
 */
final class Office {
  /** Always calculate anew when a file is opened, whoever wrote it; the default is never. */
  private static final String SETTINGS =
      """
      <?xml version="1.0" encoding="UTF-8"?>
      <oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
      <item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
      </oor:items>
      """;

  private final String program;
  private final Path folder;

  private Office(String program, Path folder) {
    this.program = program;
    this.folder = folder;
  }

  /** Skips the test where LibreOffice is not installed, and fails it where it has to be. */
  static Office in(Path folder) throws IOException {
    Optional<String> found = find();
    boolean needed = System.getenv("CI") != null;
    assertTrue(found.isPresent() || !needed, "LibreOffice is not on the PATH; .ci/run installs it");
    assumeTrue(found.isPresent(), "LibreOffice is not installed here");
    Path profile = folder.resolve("profile").resolve("user");
    Files.createDirectories(profile);
    Files.writeString(profile.resolve("registrymodifications.xcu"), SETTINGS);
    return new Office(found.orElseThrow(), folder);
  }

  private static Optional<String> find() {
    for (String place : System.getenv().getOrDefault("PATH", "").split(File.pathSeparator)) {
      for (String name : new String[] {"soffice", "libreoffice"}) {
        File file = new File(place, name);
        if (file.canExecute()) {
          return Optional.of(file.getPath());
        }
      }
    }
    return Optional.empty();
  }

  /** Opens the workbook, calculates it and saves it as xlsx again, in a folder of its own. */
  Path calculated(Path workbook) throws IOException, InterruptedException {
    Path out = folder.resolve("calculated");
    Process process =
        new ProcessBuilder(
                program,
                "-env:UserInstallation=" + folder.resolve("profile").toUri(),
                "--headless",
                "--norestore",
                "--convert-to",
                "xlsx:Calc MS Excel 2007 XML",
                "--outdir",
                out.toString(),
                workbook.toString())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("office.log").toFile())
            .start();
    boolean ended = process.waitFor(120, TimeUnit.SECONDS);
    if (!ended) {
      process.destroyForcibly();
    }
    String log = Files.readString(folder.resolve("office.log"));
    assertTrue(ended, "LibreOffice did not end: " + log);
    assertEquals(0, process.exitValue(), log);
    Path result = out.resolve(workbook.getFileName());
    assertTrue(Files.exists(result), log);
    return result;
  }
}
