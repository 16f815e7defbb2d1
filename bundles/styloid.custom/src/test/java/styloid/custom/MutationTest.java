package styloid.custom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import styloid.model.Outcome;
import styloid.model.PatientContext;
import styloid.model.Result;
import styloid.testkit.SampleEvaluations;
import styloid.workbook.PoiFormulas;

/**
 * 20,000 files broken at random from a fixed seed: each is refused with a place and a reason, or
 * loads and then calculates; none throws, and none changes what is recorded.
 */
class MutationTest {
  private static final int FILES = 20_000;
  private static final String[] PIECES = {
    "{",
    "}",
    "[",
    "]",
    ",",
    ":",
    "\"",
    "\\",
    "null",
    "true",
    "-",
    "1e999999",
    "0",
    "\\u0000",
    "\uD83D",
    "\n",
    "99999999999999999999999999",
    "\"\"",
    "{}",
    "[]",
    "time",
    "mean",
    "AVERAGE(",
    ")",
    "+",
    "/0",
    "_other",
    "_left",
    "\"both\"",
    "\"none\"",
    "\"s\"",
    "\"mm\"",
    "\"formula\": ",
    "\"of\": ",
    "\"when\": ",
    "SUM(",
    "^9^9^9",
    "*1000000",
    "%",
    "felt",
    "z",
    "norm_sd",
    "IF(",
  };

  @Test
  void everyOneIsRefusedOrLoads() {
    Random random = new Random(7007);
    PoiFormulas formulas = new PoiFormulas();
    DeclaredFile reader = new DeclaredFile(formulas, Set.of());
    int loaded = 0;
    for (int i = 0; i < FILES; i++) {
      String text = mutated(CorpusTest.BASE, random);
      DeclaredFile.Read read = reader.read(text, name -> java.util.Optional.empty());
      assertEquals(read.module().isEmpty(), !read.problems().isEmpty(), text);
      read.problems().forEach(p -> assertTrue(!p.reason().isBlank() && !p.path().isBlank()));
      if (read.module().isPresent()) {
        loaded++;
        calculates(read.module().get(), i);
      }
    }
    int refused = FILES - loaded;
    assertTrue(loaded > 1000 && refused > 10_000, loaded + " loaded, " + refused + " refused");
  }

  private static void calculates(DeclaredModule module, int seed) {
    SampleEvaluations samples = new SampleEvaluations(seed);
    PatientContext context =
        samples.context(samples.patient(), samples.snapshot(module.definition(), 0.9));
    List<Object> before = List.copyOf(context.snapshot().entries());
    for (Result result : module.results(context)) {
      assertTrue(module.definition().result(result.key()).isPresent());
      assertTrue(
          !(result.outcome() instanceof Outcome.Incomplete incomplete)
              || !incomplete.missing().isEmpty());
    }
    assertEquals(before, List.copyOf(context.snapshot().entries()));
  }

  static String mutated(String text, Random random) {
    StringBuilder broken = new StringBuilder(text);
    int changes = 1 + random.nextInt(2);
    for (int i = 0; i < changes; i++) {
      int at = random.nextInt(broken.length());
      switch (random.nextInt(6)) {
        case 0 -> broken.deleteCharAt(at);
        case 1 -> broken.insert(at, PIECES[random.nextInt(PIECES.length)]);
        case 2 -> broken.setCharAt(at, (char) (32 + random.nextInt(95)));
        case 3 -> {
          int end = Math.min(broken.length(), at + random.nextInt(40));
          broken.insert(random.nextInt(broken.length()), broken.substring(at, end));
        }
        case 4 -> broken.delete(at, Math.min(broken.length(), at + random.nextInt(40)));
        default -> swapWords(broken, random);
      }
    }
    return broken.toString();
  }

  /** Two quoted texts change places, so that the file stays well formed more often. */
  private static void swapWords(StringBuilder text, Random random) {
    String[] parts = text.toString().split("\"", -1);
    int words = parts.length / 2;
    int one = 2 * random.nextInt(words) + 1;
    int other = 2 * random.nextInt(words) + 1;
    String kept = parts[one];
    parts[one] = parts[other];
    parts[other] = kept;
    text.setLength(0);
    text.append(String.join("\"", parts));
  }
}
