package styloid.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FormulaTextTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          =a__b+1                          | a__b+1
          AVERAGE(a__b, a__c ,a__d)        | AVERAGE(a__b,a__c,a__d)
          average(a__b;a__c)               | AVERAGE(a__b,a__c)
          (a__b-28.3)/5.9*-1               | (a__b-28.3)/5.9*-1
          NORM.S.DIST(a__b,TRUE)           | _xlfn.NORM.S.DIST(a__b,TRUE)
          stdev.s(a__b,a__c)               | _xlfn.STDEV.S(a__b,a__c)
          STDEV(a__b,a__c)                 | STDEV(a__b,a__c)
          IF(a__b>=10,"a ""b ",-2^2%)     | IF(a__b>=10,"a ""b ",-2^2%)
          1.5E-3*a__b                      | 1.5E-3*a__b
          PI()                             | PI()
          a__b<>a__c                       | a__b<>a__c
          """)
  void isTakenOverInTheSpellingOfTheFile(String formula, String written) {
    assertEquals(Optional.of(written), FormulaText.read(formula).map(FormulaText.Ready::text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "=",
        "a__b+",
        "(a__b",
        "a__b)",
        "AVERAGE(a__b,,a__c)",
        "AVERAGE(a__b",
        "\"open",
        "1.2.3",
        "1e",
        "HYPERLINK(\"http://example.org\",\"x\")",
        "WEBSERVICE(\"http://example.org\")",
        "INDIRECT(\"A1\")",
        "cmd|'/c calc'!A0",
        "[other.xlsx]Sheet1!A1",
        "Sheet1!A1",
        "$A$1",
        "A1:A3",
        "{1,2}",
        "a__b a__c",
        "a__b\n+1",
        "#REF!"
      })
  void isRefusedWhenNotOfTheKnownKind(String formula) {
    assertEquals(Optional.empty(), FormulaText.read(formula));
  }

  @Test
  void deepNestingIsRefusedInsteadOfOverflowing() {
    assertEquals(Optional.empty(), FormulaText.read("(".repeat(100_000) + "1"));
  }

  @Test
  void namesReadAreGiven() {
    Set<String> names = FormulaText.read("A__B+SUM(a__c,a__b)").orElseThrow().names();
    assertEquals(Set.of("a__b", "a__c"), names);
  }
}
