package styloid.checks.window;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import styloid.checks.Project;

/** The assembled suite in a process of its own, with a window in memory and a driver inside. */
final class DrivenSuite implements AutoCloseable {
  private static final long END_SECONDS = 60;

  private final Process process;
  private final BufferedWriter requests;
  private final BufferedReader answers;
  private final ArrayList<String> heard = new ArrayList<>();

  private DrivenSuite(Process process) {
    this.process = process;
    requests =
        new BufferedWriter(
            new OutputStreamWriter(process.getOutputStream(), StandardCharsets.UTF_8));
    answers =
        new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
  }

  /** Starts the suite as its script does, on this data folder. */
  static DrivenSuite start(Path data, String... args) throws IOException {
    Path suite = Project.suite();
    ArrayList<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    for (String line : Files.readAllLines(suite.resolve("conf/java.args"))) {
      if (!line.isBlank() && !line.startsWith("#")) {
        command.addAll(List.of(line.strip().split(" ")));
      }
    }
    Path monocle = onClassPath("openjfx-monocle");
    command.addAll(
        List.of(
            "-p",
            suite.resolve("lib/fx").toString(),
            "--patch-module",
            "javafx.graphics=" + monocle,
            "-Dglass.platform=Monocle",
            "-Dmonocle.platform=Headless",
            "-Dprism.order=sw",
            "-Dheadless.geometry=1366x768",
            "-Djava.awt.headless=true",
            "-cp",
            suite.resolve("lib")
                + File.separator
                + "*"
                + File.pathSeparator
                + Project.ROOT.resolve("features/styloid.checks/target/test-classes"),
            WindowDriver.class.getName()));
    command.addAll(List.of(args));
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().putAll(Map.of("DISPLAY", ":none", "STYLOID_DATA", data.toString()));
    builder.redirectError(ProcessBuilder.Redirect.INHERIT);
    return new DrivenSuite(builder.start());
  }

  private static Path onClassPath(String name) {
    for (String entry : System.getProperty("java.class.path").split(File.pathSeparator)) {
      if (entry.contains(name)) {
        return Path.of(entry);
      }
    }
    throw new AssertionError(name + " is not on the class path");
  }

  /** Asks the driver and gives its answer. */
  String ask(String request) throws IOException {
    requests.write(request);
    requests.newLine();
    requests.flush();
    for (String line = answers.readLine(); line != null; line = answers.readLine()) {
      heard.add(line);
      if (line.startsWith("@")) {
        return line.substring(1);
      }
    }
    throw new AssertionError("the suite ended; it said " + heard);
  }

  /** Fails unless the window shows this text within a minute. */
  void see(String text) throws IOException {
    if (!"true".equals(ask("see " + text))) {
      throw new AssertionError("the window does not show \"" + text + "\"; focus: " + ask("focus"));
    }
  }

  void keys(String... codes) throws IOException {
    for (String code : codes) {
      String answer = ask("key " + code);
      if (!answer.equals("ok")) {
        throw new AssertionError(code + ": " + answer);
      }
    }
  }

  void type(String text) throws IOException {
    String answer = ask("type " + text);
    if (!answer.equals("ok")) {
      throw new AssertionError(text + ": " + answer);
    }
  }

  /** Ends the process at once, as a crash would. */
  void kill() {
    process.destroyForcibly();
    try {
      process.waitFor(END_SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public void close() {
    kill();
  }
}
