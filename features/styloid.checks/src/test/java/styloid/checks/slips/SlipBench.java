package styloid.checks.slips;

import java.util.List;
import styloid.goniometry.Goniometry;
import styloid.grip.GripModule;
import styloid.spi.TestDefinition;

/** Prints what the questions about slips find; arguments: first seed, evaluations. */
public final class SlipBench {
  static final List<TestDefinition> TESTS =
      List.of(new Goniometry().definition(), new GripModule().definition());

  SlipBench() {}

  public static void main(String[] args) {
    long seed = args.length > 0 ? Long.parseLong(args[0]) : 500_000;
    int evaluations = args.length > 1 ? Integer.parseInt(args[1]) : 2000;
    System.out.print(Measured.of(TESTS, seed, evaluations));
  }
}
