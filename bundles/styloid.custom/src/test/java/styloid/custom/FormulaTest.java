package styloid.custom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import styloid.model.Message;
import styloid.spi.Formulas;
import styloid.workbook.PoiFormulas;

/** Every function of the list gives what OpenFormula says, by the evaluator the suite uses. */
class FormulaTest {
  private static final Formulas FORMULAS = new PoiFormulas();

  /**
   * Expected values: worked by hand from the definitions of ISO/IEC 26300-2; NORMSDIST and NORMSINV
   * from tables of the normal curve.
   */
  private static final String EXAMPLES =
      """
      ABS(-2)|2
      AND(TRUE,FALSE)+0|0
      AVERAGE(a,b,c)|3
      CEILING(2.1,0.5)|2.5
      COUNT(a,b,c)|3
      EXP(0)|1
      FLOOR(2.7,0.5)|2.5
      IF(a>b,1,2)|2
      INT(-2.5)|-3
      LN(1)|0
      LOG(8,2)|3
      LOG(1000)|3
      LN(0.5)|-0.6931472
      LOG10(1000)|3
      MAX(a,b,c)|6
      MEDIAN(a,b,c)|2
      MIN(a,b,c)|1
      MOD(7,4)|3
      MOD(-3,2)|1
      NORMSDIST(1.96)|0.9750021
      NORMSDIST(-1.96)|0.0249979
      NORMSDIST(0)|0.5
      NORMSDIST(0-(NORMSDIST(0)+0.5))|0.1586553
      NORMSINV(0.975)|1.959964
      NORMSINV(0.025)|-1.959964
      NOT(FALSE)+0|1
      OR(TRUE,FALSE)+0|1
      PI()|3.14159265
      POWER(2,10)|1024
      PRODUCT(a,b,c)|12
      ROUND(2.45,1)|2.5
      ROUND(-2.45,1)|-2.5
      ROUNDDOWN(2.49,1)|2.4
      ROUNDUP(2.41,1)|2.5
      ROUNDUP(-2.41,1)|-2.5
      ROUNDDOWN(-2.49,1)|-2.4
      SIGN(-3)|-1
      SQRT(16)|4
      STDEV(a,b,c)|2.6457513
      STDEVP(a,b,c)|2.1602469
      SUM(a,b,c)|9
      SUMSQ(a,b,c)|41
      TRUNC(2.79,1)|2.7
      TRUNC(-2.79,1)|-2.7
      ABS(-0.5)|0.5
      VAR(a,b,c)|7
      VARP(a,b,c)|4.6666667
      -2^2|4
      2+3*4|14
      (2+3)*4|20
      50%*4|2
      10-2-3|5
      2^3^2|64
      """;

  @Test
  void everyFunctionOfTheListHasAnExample() {
    TreeSet<String> shown = new TreeSet<>();
    EXAMPLES.lines().forEach(line -> shown.add(line.replaceAll("\\(.*", "")));
    assertTrue(shown.containsAll(Functions.names()), () -> "of " + Functions.names());
  }

  @Test
  void examplesComeOutAsDefined() throws FormulaException {
    for (String line : EXAMPLES.lines().toList()) {
      String formula = line.substring(0, line.indexOf('|'));
      double expected = Double.parseDouble(line.substring(line.indexOf('|') + 1));
      Spelling spelling =
          Spelling.neutral(
              FormulaReader.read(formula), Map.of("a", number(1), "b", number(2), "c", number(6)));
      Formulas.Answer answer = FORMULAS.evaluate(spelling.text(), spelling.values());
      assertEquals(expected, answer.number().orElseThrow(), 1e-6, formula);
    }
  }

  private static List<Input> number(int number) {
    return List.of(
        new Input(
            Optional.of(BigDecimal.valueOf(number)),
            Optional.empty(),
            Optional.empty(),
            Message.verbatim(""),
            List.of(),
            Optional.empty(),
            List.of()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          1/0       | #DIV/0!
          SQRT(-1)  | #NUM!
          LN(0)     | #NUM!
          a>b       | #VALUE!
          nothing(1)| #NAME?
          """)
  void whatHasNoNumberSaysWhy(String formula, String expected) {
    Formulas.Answer answer = FORMULAS.evaluate(formula, Map.of("a", 1d, "b", 2d));
    assertEquals(expected, answer.fault());
    assertTrue(answer.number().isEmpty());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          AVERAG(x)        | 0  | did you mean "AVERAGE"
          1+               | 2  | ends too early
          (1+2             | 0  | not closed
          1+2)             | 3  | does not fit
          Sheet1!A1        | 6  | cannot be referred to
          [other.xlsx]x    | 0  | cannot be referred to
          $A$1             | 0  | cannot be referred to
          A1:B2            | 2  | cannot be referred to
          'other'#x        | 0  | cannot be referred to
          SUM()            | 0  | takes 1 to 30
          ROUND(1)         | 0  | takes 2 arguments
          PI(1)            | 0  | takes 0 arguments
          IF(1,2)          | 0  | takes 3 arguments
          1.2.3            | 0  | write a number
          1e5              | 0  | write a number
          "a" & "b"        | 4  | cannot be joined
          "open            | 0  | not closed
          SUM(1,)          | 6  | an argument is missing
          a;b              | 1  | does not fit
          INDIRECT("A1")   | 0  | not a function
          WEBSERVICE("x")  | 0  | not a function
          """)
  void whatIsNotOfTheListIsRefusedAtItsPlace(String formula, int at, String reason) {
    FormulaException refused =
        org.junit.jupiter.api.Assertions.assertThrows(
            FormulaException.class, () -> FormulaReader.read(formula));
    assertTrue(refused.getMessage().contains(reason), refused::getMessage);
    assertEquals(at, refused.at(), refused::getMessage);
  }
}
