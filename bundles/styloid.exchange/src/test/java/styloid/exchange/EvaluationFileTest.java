package styloid.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Reader;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import styloid.exchange.json.JsonReader;
import styloid.exchange.json.Problems;
import styloid.model.Absence;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.FileProblem;
import styloid.model.PatientRecord;
import styloid.model.Quantity;
import styloid.model.Side;
import styloid.model.Unit;

class EvaluationFileTest {
  static final String EXAMPLE =
      """
      {
        "format": 1,
        "patient": {
          "id": "3f0c8a52-6a57-4e0e-9d51-0f8d2a8f7a01",
          "recordNumber": "00417",
          "name": "Invented Person",
          "involved": ["right"]
        },
        "precautions": [
          {"kind": "no-resistance", "region": "wrist", "side": "right", "until": "2026-03-31"}
        ],
        "evaluations": [
          {
            "id": "b6a1c6de-51f3-4b5b-8a0b-8c1f3f3f9d10",
            "date": "2026-03-02",
            "therapist": "A. Example",
            "state": "draft",
            "versions": {"grip": "1"},
            "entries": [
              {"item": "grip/power", "side": "left", "value": {"amount": "27.50", "unit": "kgf"}, "at": "2026-03-02T09:15:00Z"},
              {"item": "grip/power", "side": "left", "digit": "index", "trial": 2, "value": {"absent": "pain"}, "at": "2026-03-02T09:15:00Z", "by": "B. Learner", "confirmed": true},
              {"item": "grip/power", "side": "left", "value": null, "at": "2026-03-02T10:16:00+01:00"}
            ],
            "drafts": [{"item": "grip/power", "side": "right", "text": "38."}]
          }
        ]
      }
      """;

  static EvaluationFile.Read read(String text) throws IOException {
    return EvaluationFile.read(new StringReader(text));
  }

  static String written(PatientRecord record) throws IOException {
    StringWriter out = new StringWriter();
    EvaluationFile.write(record, out);
    return out.toString();
  }

  @Test
  void aHandWrittenFileMeansWhatItSays() throws IOException {
    EvaluationFile.Read read = read(EXAMPLE);
    assertEquals(List.of(), read.problems());
    List<Entry> entries = read.record().orElseThrow().evaluations().get(0).ledger().entries();
    Entry first = entries.get(0);
    assertEquals(Optional.of(Quantity.of("27.50", Unit.KILOGRAM_FORCE)), first.value());
    assertEquals(Side.LEFT, first.key().side());
    assertEquals(Digit.NONE, first.key().digit());
    assertEquals(1, first.key().trial());
    assertEquals("A. Example", first.by().value());
    assertFalse(first.confirmed());
    Entry second = entries.get(1);
    assertEquals(Optional.of(new Absence(Absence.Reason.PAIN)), second.value());
    assertEquals("grip/power/left/index/2", second.key().toString());
    assertEquals("B. Learner", second.by().value());
    assertTrue(second.confirmed());
    assertEquals(Optional.empty(), entries.get(2).value());
    assertEquals("2026-03-02T09:16:00Z", entries.get(2).at().toString());
  }

  @Test
  void idsLeftOutAreTheSameAtEveryReadingAndDiffer() throws IOException {
    assertEquals(read(EXAMPLE), read(EXAMPLE));
    List<Entry> entries =
        read(EXAMPLE).record().orElseThrow().evaluations().get(0).ledger().entries();
    assertEquals(3, entries.stream().map(Entry::id).distinct().count());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          "format": 1                  | "format": ^2                  | $.format
          "patient": {                 | "patient": {"nmae": ^"",      | $.patient.nmae
          "name": "Invented Person"    | "name": ^7                    | $.patient.name
          "name": "Invented Person"    | "name": ^null                 | $.patient.name
          ["right"]                    | ["right", ^"rigth"]           | $.patient.involved[1]
          "2026-03-02",                | ^"2026-02-30",                | $.evaluations[0].date
          "no-resistance"              | ^"no-resistence"              | $.precautions[0].kind
          "trial": 2                   | "trial": ^0                   | $.evaluations[0].entries[1].trial
          "trial": 2                   | "trail": ^2                   | $.evaluations[0].entries[1].trail
          "amount": "27.50"            | "amount": ^27.50              | $.evaluations[0].entries[0].value.amount
          "unit": "kgf"                | "unit": ^"kg"                 | $.evaluations[0].entries[0].value.unit
          {"absent": "pain"            | ^{"absent": "pain", "text": "" | $.evaluations[0].entries[1].value
          "grip": "1"                  | "Grip": ^"1"                  | $.evaluations[0].versions.Grip
          "text": "38."                | "text": "38.", ^"text": ""    | $.evaluations[0].drafts[0].text
          "drafts": [                  | "definitions": [^"gone"], "drafts": [ | $.evaluations[0].definitions[0]
          """)
  void aFaultIsNamedWithItsPlace(String from, String marked, String path) throws IOException {
    assertTrue(EXAMPLE.contains(from));
    String text = EXAMPLE.replaceFirst(Pattern.quote(from), marked);
    String before = text.substring(0, text.indexOf('^'));
    EvaluationFile.Read read = read(text.replace("^", ""));
    assertEquals(Optional.empty(), read.record());
    long line = 1 + before.chars().filter(c -> c == '\n').count();
    int column = before.length() - before.lastIndexOf('\n');
    List<String> places =
        read.problems().stream().map(p -> p.line() + ":" + p.column() + " " + p.path()).toList();
    assertTrue(places.contains(line + ":" + column + " " + path), read.problems().toString());
  }

  @Test
  void textThatIsNotJsonIsNamedWithItsPlace() throws IOException {
    FileProblem problem = read(EXAMPLE.replace("\"draft\"", "draft")).problems().get(0);
    assertEquals(17, problem.line());
    assertEquals("$.evaluations[0].state", problem.path());
    assertTrue(problem.reason().startsWith("not valid JSON: "), problem.reason());
  }

  @Test
  void anIdThatStandsTwiceIsRefused() throws IOException {
    EvaluationFile.Read read = read(EXAMPLE.replace("\"digit\": \"index\", \"trial\": 2, ", ""));
    assertEquals("$.evaluations[0].entries[1]", read.problems().get(0).path());
  }

  @Test
  void aPrecautionThatEndsBeforeItBeginsIsRefused() throws IOException {
    EvaluationFile.Read read =
        read(EXAMPLE.replace("\"until\"", "\"from\": \"2026-04-01\", \"until\""));
    assertEquals("$.precautions[0]", read.problems().get(0).path());
  }

  @Test
  void aSideLeftOutIsRefused() throws IOException {
    EvaluationFile.Read read = read(EXAMPLE.replace("\"side\": \"left\", ", ""));
    assertEquals(3, read.problems().size());
    assertEquals("\"side\" is missing", read.problems().get(0).reason());
  }

  @Test
  void aNearMissIsSuggested() throws IOException {
    String reason = read(EXAMPLE.replace("therapist", "terapist")).problems().get(1).reason();
    assertEquals("unknown key; did you mean \"therapist\"?", reason);
  }

  @Test
  void problemsAreBoundedAndTheRestCounted() throws IOException {
    String many = "{\"item\": \"x\"},".repeat(200);
    EvaluationFile.Read read = read(EXAMPLE.replace("\"entries\": [", "\"entries\": [" + many));
    assertEquals(Problems.MOST + 1, read.problems().size());
    assertTrue(read.problems().get(Problems.MOST).reason().endsWith("put these right first"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "null",
        "[]",
        "{",
        "{}",
        "{} {}",
        "{\"format\": 1,}",
        "{'format': 1}",
        "{\"format\": 01}",
        "{\"format\": NaN}",
        "{\"format\": \"1\"}",
        "{\"format\": 1e0}",
        "{\"format\": 99999999999999999999}",
        "{\"format\": 1, // no\n\"patient\": {}}",
        "{\"format\": 1, \"patient\": []}",
        "{\"format\": 1, \"patient\": {\"\\uD800\": \"\\uDFFF\"}}",
        "{\"format\": 1, \"patient\": \"line\nbreak\"}",
        "\u0000",
        "\uFEFF\uFEFF{}",
        "\"\\x\"",
        "PK\u0003\u0004"
      })
  void malformedTextIsAProblemNotAnException(String text) throws IOException {
    EvaluationFile.Read read = read(text);
    assertEquals(Optional.empty(), read.record());
    assertFalse(read.problems().isEmpty());
    read.problems().forEach(p -> assertTrue(p.path().startsWith("$") && !p.reason().isBlank()));
  }

  @Test
  void deepNestingIsRefused() throws IOException {
    FileProblem problem = read("[".repeat(100_000)).problems().get(0);
    assertTrue(problem.reason().startsWith("too large or nested too deep"), problem.reason());
  }

  @Test
  void tooManyValuesAreRefused() throws IOException {
    String text = "[" + "0,".repeat(JsonReader.MOST_VALUES) + "0]";
    String reason = read(text).problems().get(0).reason();
    assertTrue(reason.contains("1000000 values"), reason);
  }

  @Test
  void aFileWithoutEndIsRefused() throws IOException {
    Reader endless =
        new Reader() {
          @Override
          public int read(char[] buffer, int offset, int length) {
            Arrays.fill(buffer, offset, offset + length, ' ');
            return length;
          }

          @Override
          public void close() {}
        };
    assertFalse(EvaluationFile.read(endless).problems().isEmpty());
  }

  @Test
  void bytesThatAreNotUtf8AreAProblem() throws IOException {
    byte[] latin = EXAMPLE.replace("Person", "Pérson").getBytes(StandardCharsets.ISO_8859_1);
    EvaluationFile.Read read = EvaluationFile.read(new ByteArrayInputStream(latin));
    assertTrue(read.problems().get(0).reason().contains("UTF-8"));
  }

  @Test
  void aByteOrderMarkIsSkipped() throws IOException {
    assertEquals(List.of(), read("\uFEFF" + EXAMPLE).problems());
  }

  @Test
  void aFailingDiskIsAnException() {
    Reader failing =
        new Reader() {
          @Override
          public int read(char[] buffer, int offset, int length) throws IOException {
            throw new IOException("disk");
          }

          @Override
          public void close() {}
        };
    assertThrows(IOException.class, () -> EvaluationFile.read(failing));
  }

  @Test
  void anyRecordWrittenReadsBackEqual() throws IOException {
    RandomRecords records = new RandomRecords(20260302);
    for (int i = 0; i < 400; i++) {
      PatientRecord record = records.record();
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      EvaluationFile.write(record, new OutputStreamWriter(bytes, StandardCharsets.UTF_8));
      EvaluationFile.Read read = EvaluationFile.read(new ByteArrayInputStream(bytes.toByteArray()));
      assertEquals(List.of(), read.problems());
      assertEquals(record, read.record().orElseThrow());
      assertEquals(bytes.toString(StandardCharsets.UTF_8), written(read.record().get()));
    }
  }

  @Test
  void anEntryIsWrittenOnOneLine() throws IOException {
    String text = written(read(EXAMPLE).record().orElseThrow());
    List<String> lines = text.lines().filter(l -> l.contains("\"27.50\"")).toList();
    assertEquals(1, lines.size());
    assertTrue(
        lines.get(0).startsWith("        {\"id\": \"") && lines.get(0).endsWith("\"},"), text);
    assertTrue(text.endsWith("}\n"));
  }
}
