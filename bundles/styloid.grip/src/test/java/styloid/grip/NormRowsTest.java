package styloid.grip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import styloid.model.Patient.Dominance;
import styloid.model.Patient.Sex;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.Results;
import styloid.model.Side;
import styloid.model.Unit;

/**
 * Every row of every table, by a second path: the file is split here, the score is worked out in
 * decimals, and probability comes from a statistics library.
 */
class NormRowsTest {
  private static final List<BigDecimal> AWAY =
      List.of(new BigDecimal("-1.7"), new BigDecimal("0.2"), new BigDecimal("0.9"));

  private record Row(Map<String, String> cells) {
    String get(String column) {
      return cells.getOrDefault(column, "");
    }

    BigDecimal number(String column) {
      return new BigDecimal(get(column));
    }
  }

  private static List<Row> rows(String table) throws IOException {
    ArrayList<Row> rows = new ArrayList<>();
    try (InputStream in = NormRowsTest.class.getResourceAsStream(table + ".csv")) {
      String[] columns = null;
      for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\n")) {
        if (line.startsWith("#")) {
          continue;
        }
        String[] cells = line.split(",", -1);
        if (columns == null) {
          columns = cells;
        } else {
          HashMap<String, String> row = new HashMap<>();
          for (int i = 0; i < columns.length; i++) {
            row.put(columns[i], cells[i]);
          }
          rows.add(new Row(row));
        }
      }
    }
    return rows;
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          mathiowetz-1985,      [lbf_av], mean,    186
          massy-westropp-2011,  kgf,      mean,    24
          palmar-decade,        [lbf_av], mean,    10
          steiber-2016,         kgf,      maximum, 28
          steiber-2016-height,  kgf,      maximum, 195
          """)
  void everyRowGivesItsZAndPercentile(String table, String unit, String score, int count)
      throws IOException {
    List<Row> rows = rows(table);
    assertEquals(count, rows.size());
    for (Row row : rows) {
      for (int age : ages(row)) {
        for (String height : heights(row)) {
          check(table, row, age, height, Unit.ofUcum(unit), score);
        }
      }
    }
  }

  private static List<Integer> ages(Row row) {
    int from = Integer.parseInt(row.get("age_min_years"));
    String to = row.get("age_max_years");
    return List.of(from, to.isEmpty() ? from + 20 : Integer.parseInt(to));
  }

  private static List<String> heights(Row row) {
    String from = row.get("height_min_cm");
    String to = row.get("height_max_cm");
    return from.isEmpty() ? List.of("") : List.of(from, to.isEmpty() ? "215" : to);
  }

  private static void check(
      String table, Row row, int age, String height, Unit unit, String score) {
    String measure = row.get("measure");
    Visit visit =
        new Visit()
            .who(row.get("sex").equals("M") ? Sex.MALE : Sex.FEMALE, age)
            .handed(Dominance.LEFT)
            .choosing(measure.equals("power") ? "grip.norm" : "grip.norm." + measure, table);
    if (!height.isEmpty()) {
      visit.tall(height);
    }
    ArrayList<BigDecimal> typed = new ArrayList<>();
    for (BigDecimal away : AWAY) {
      BigDecimal reading = row.number("mean").add(away.multiply(row.number("sd")));
      typed.add(reading.max(BigDecimal.ZERO).setScale(2, RoundingMode.HALF_UP));
    }
    String[] readings = typed.stream().map(BigDecimal::toPlainString).toArray(String[]::new);
    boolean best = score.equals("maximum");
    Side side = side(row, best);
    visit.trials(measure, best ? Side.RIGHT : side, unit, readings);
    if (best) {
      visit.trials(measure, Side.LEFT, unit, "0.5", "0.5", "0.5");
    }
    BigDecimal expected =
        best
            ? typed.stream().max(BigDecimal::compareTo).orElseThrow()
            : typed.stream()
                .reduce(BigDecimal.ZERO, BigDecimal::add)
                .divide(BigDecimal.valueOf(3), MathContext.DECIMAL128);
    Results results = visit.results();
    double sd = row.number("sd").doubleValue();
    double mean = row.number("mean").doubleValue();
    String name = best ? "best" : measure;
    String where = row + " at age " + age + " height " + height;
    double z = expected.subtract(row.number("mean")).doubleValue() / sd;
    assertEquals(z, number(results, "z-" + name, side), 1e-12, where);
    assertEquals(
        100 * NormalDistribution.of(mean, sd).cumulativeProbability(expected.doubleValue()),
        number(results, "percentile-" + name, side),
        1e-11,
        where);
    Result result = results.result(Say.key("z-" + name, side)).orElseThrow();
    assertTrue(
        result.why().sources().stream()
            .anyMatch(s -> s.status().code().equals(row.get("status")) && !s.citation().isBlank()),
        where);
    assertEquals("grip-norm", result.why().rule());
  }

  private static double number(Results results, String id, Side side) {
    Quantity value = results.result(Say.key(id, side)).orElseThrow().quantity().orElseThrow();
    return value.amount().doubleValue();
  }

  private static Side side(Row row, boolean best) {
    if (best) {
      return Side.UNSIDED;
    }
    return switch (row.get("hand")) {
      case "R" -> Side.RIGHT;
      case "L", "D" -> Side.LEFT;
      default -> throw new AssertionError("hand of " + row);
    };
  }
}
