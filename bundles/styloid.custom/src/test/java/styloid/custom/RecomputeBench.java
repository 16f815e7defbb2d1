package styloid.custom;

import java.util.Arrays;
import styloid.model.Patient;
import styloid.model.PatientContext;
import styloid.model.Side;
import styloid.model.Unit;

/** Time to calculate a declared test anew after one entry. Run by hand. */
public final class RecomputeBench {
  private static final int ROUNDS = 4000;

  private RecomputeBench() {}

  public static void main(String[] args) {
    for (String name : Shipped.names()) {
      DeclaredModule module = ShippedContractTest.load(name);
      double[] micros = new double[ROUNDS];
      for (int i = 0; i < ROUNDS; i++) {
        PatientContext context = filled(module, name, i);
        long start = System.nanoTime();
        module.results(context);
        micros[i] = (System.nanoTime() - start) / 1e3;
      }
      double[] warm = Arrays.copyOfRange(micros, ROUNDS / 2, ROUNDS);
      Arrays.sort(warm);
      System.Logger log = System.getLogger(RecomputeBench.class.getName());
      log.log(
          System.Logger.Level.INFO,
          "{0}: median {1} us, 95 % within {2} us, cold {3} us",
          name,
          warm[warm.length / 2],
          warm[warm.length * 95 / 100],
          micros[0]);
    }
  }

  private static PatientContext filled(DeclaredModule module, String name, int round) {
    if (name.equals("nine-hole-peg")) {
      return new Visit(module)
          .of(Patient.Sex.FEMALE, 40)
          .number("time", Side.RIGHT, "" + (15 + round % 20), Unit.SECOND)
          .number("time", Side.LEFT, "20", Unit.SECOND)
          .context();
    }
    var samples = new styloid.testkit.SampleEvaluations(round);
    return samples.context(samples.patient(), samples.full(module.definition()));
  }
}
