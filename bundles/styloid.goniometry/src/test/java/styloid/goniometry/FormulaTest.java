package styloid.goniometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import styloid.model.Entry;
import styloid.model.Patient;
import styloid.model.PatientContext;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.Snapshot;
import styloid.spi.TestDefinition;
import styloid.testkit.SampleEvaluations;

/** Every shown formula, worked out by a small reader of formulas, gives the value beside it. */
class FormulaTest {
  @Test
  void formulaGivesTheValue() {
    TestDefinition definition = Visit.module().definition();
    SampleEvaluations samples = new SampleEvaluations(29);
    int checked = 0;
    for (int i = 0; i < 20; i++) {
      Patient patient = samples.patient();
      Snapshot snapshot = samples.full(definition);
      PatientContext context = samples.context(patient, snapshot);
      Map<String, Double> cells = cells(snapshot);
      for (Result result : Visit.module().results(context)) {
        Optional<Quantity> value = result.quantity();
        Optional<String> formula = result.why().formula();
        if (value.isPresent() && formula.isPresent()) {
          double expected = value.get().amount().doubleValue();
          assertEquals(expected, new Formula(formula.get(), cells).value(), 1e-9, formula.get());
          checked++;
        }
      }
    }
    assertTrue(checked > 10_000, checked + " formulas");
  }

  private static Map<String, Double> cells(Snapshot snapshot) {
    HashMap<String, Double> cells = new HashMap<>();
    for (Entry entry : snapshot.entries()) {
      if (entry.value().orElseThrow() instanceof Quantity q) {
        cells.put(entry.key().cellName(), q.amount().doubleValue());
      }
    }
    return cells;
  }

  /** Sums, products, brackets, names, MIN, MAX and NORMSDIST. */
  private static final class Formula {
    private final String text;
    private final Map<String, Double> cells;
    private int at;

    Formula(String text, Map<String, Double> cells) {
      this.text = text;
      this.cells = cells;
    }

    double value() {
      double value = sum();
      assertEquals(text.length(), at, "left over in " + text);
      return value;
    }

    private boolean take(char c) {
      boolean there = at < text.length() && text.charAt(at) == c;
      at += there ? 1 : 0;
      return there;
    }

    private double sum() {
      double value = product();
      while (true) {
        if (take('+')) {
          value += product();
        } else if (take('-')) {
          value -= product();
        } else {
          return value;
        }
      }
    }

    private double product() {
      double value = part();
      while (true) {
        if (take('*')) {
          value *= part();
        } else if (take('/')) {
          value /= part();
        } else {
          return value;
        }
      }
    }

    private double part() {
      if (take('-')) {
        return -part();
      }
      if (take('(')) {
        double value = sum();
        assertTrue(take(')'), text);
        return value;
      }
      int from = at;
      while (at < text.length() && String.valueOf(text.charAt(at)).matches("[A-Za-z0-9_.]")) {
        at++;
      }
      String word = text.substring(from, at);
      if (take('(')) {
        return function(word);
      }
      return Character.isDigit(word.charAt(0)) ? Double.parseDouble(word) : cells.get(word);
    }

    private double function(String name) {
      double first = sum();
      double value =
          switch (name) {
            case "MIN" -> Math.min(first, second());
            case "MAX" -> Math.max(first, second());
            case "NORMSDIST" -> NormalDistribution.of(0, 1).cumulativeProbability(first);
            default -> throw new AssertionError("unknown function " + name);
          };
      assertTrue(take(')'), text);
      return value;
    }

    private double second() {
      assertTrue(take(','), text);
      return sum();
    }
  }
}
