package styloid.suite;

import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * Measures start to usable window of the assembled suite on the demo clinic, beside a bare window
 * under the same flags. By hand, from the root, after {@code mvn package}, with a display: {@code
 * java -cp features/styloid.suite/target/test-classes styloid.suite.StartBench
 * features/styloid.suite/target/styloid FOLDER 7}.
 */
public final class StartBench {
  static final String BARE_OPEN = "bare window open";
  private static final String SUITE_OPEN = "Styloid is open on ";

  private StartBench() {}

  /**
   * Runs both in turn and prints medians.
   *
   * @param args folder of the suite; folder of data, kept between runs; number of runs
   */
  public static void main(String[] args) throws IOException, InterruptedException {
    PrintWriter out = new PrintWriter(new FileOutputStream(FileDescriptor.out), true);
    Path suite = Path.of(args[0]);
    int runs = Integer.parseInt(args[2]);
    List<String> suiteCommand =
        java(
            suite,
            "styloid.launcher.Main",
            suite.resolve("lib") + "/*",
            "--demo",
            "--data",
            args[1]);
    String own = Path.of("features/styloid.suite/target/test-classes").toString();
    List<String> bareCommand = java(suite, BareWindow.class.getName(), own);
    // Once each beforehand: the first start fills the demo clinic and the file cache.
    millis(suiteCommand, SUITE_OPEN);
    millis(bareCommand, BARE_OPEN);
    long[] suiteTimes = new long[runs];
    long[] bareTimes = new long[runs];
    for (int i = 0; i < runs; i++) {
      suiteTimes[i] = millis(suiteCommand, SUITE_OPEN);
      bareTimes[i] = millis(bareCommand, BARE_OPEN);
    }
    Arrays.sort(suiteTimes);
    Arrays.sort(bareTimes);
    long suiteMedian = suiteTimes[runs / 2];
    long bareMedian = bareTimes[runs / 2];
    out.println("suite " + Arrays.toString(suiteTimes) + " ms, median " + suiteMedian);
    out.println("bare window " + Arrays.toString(bareTimes) + " ms, median " + bareMedian);
    out.printf("ratio %.2f%n", suiteMedian / (double) bareMedian);
  }

  private static List<String> java(Path suite, String main, String classPath, String... more) {
    ArrayList<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("@" + suite.resolve("conf").resolve("java.args"));
    command.addAll(List.of("-p", suite.resolve("lib").resolve("fx").toString()));
    command.addAll(List.of("-cp", classPath, main));
    command.addAll(List.of(more));
    return command;
  }

  private static long millis(List<String> command, String openLine)
      throws IOException, InterruptedException {
    long begin = System.nanoTime();
    Process process =
        new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
    try (BufferedReader lines = process.inputReader(StandardCharsets.UTF_8)) {
      String line = lines.readLine();
      while (line != null && !line.startsWith(openLine)) {
        line = lines.readLine();
      }
      if (line == null) {
        throw new IOException("the window did not open: " + command);
      }
      return TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - begin);
    } finally {
      process.destroy();
      process.waitFor();
    }
  }
}
