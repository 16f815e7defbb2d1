package styloid.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import styloid.model.Absence;
import styloid.model.Codes;
import styloid.model.Digit;
import styloid.model.Precaution;
import styloid.model.Region;
import styloid.model.Side;
import styloid.model.Unit;

/** The published schema, judged by a validator that is not ours. */
class SchemaTest {
  private static final Path DOCS = Path.of("..", "..", "docs");
  private static String schemaText;
  private static JsonSchema schema;

  @BeforeAll
  static void load() throws IOException {
    schemaText = Files.readString(DOCS.resolve("evaluation-file.schema.json"));
    schema = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(schemaText);
  }

  private static boolean valid(String text) {
    return schema.validate(text, InputFormat.JSON).isEmpty();
  }

  @Test
  void writtenFilesAreValid() throws IOException {
    RandomRecords records = new RandomRecords(7);
    for (int i = 0; i < 60; i++) {
      String text = EvaluationFileTest.written(records.record());
      assertEquals(Set.of(), schema.validate(text, InputFormat.JSON), text);
    }
    assertTrue(valid(EvaluationFileTest.EXAMPLE));
  }

  @Test
  void theExampleOfTheDocumentIsValidAndReads() throws IOException {
    String document = Files.readString(DOCS.resolve("evaluation-file.md"));
    Matcher example = Pattern.compile("```json\n(.*?)```", Pattern.DOTALL).matcher(document);
    assertTrue(example.find());
    assertTrue(valid(example.group(1)));
    assertEquals(List.of(), EvaluationFileTest.read(example.group(1)).problems());
  }

  @Test
  void theFilesOfTheDemoClinicAreValidAndReadBackEqual() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("..", "..", "demo-data", "patients"))) {
      List<Path> all = files.filter(f -> f.toString().endsWith(".json")).toList();
      assertTrue(all.size() >= 12);
      for (Path file : all) {
        String text = Files.readString(file);
        assertEquals(Set.of(), schema.validate(text, InputFormat.JSON), file.toString());
        EvaluationFile.Read read = EvaluationFileTest.read(text);
        assertEquals(List.of(), read.problems(), file.toString());
        String again = EvaluationFileTest.written(read.record().orElseThrow());
        assertEquals(read, EvaluationFileTest.read(again));
      }
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          "format": 1                 | "format": 2
          "format": 1                 | "format": 1, "remark": ""
          "recordNumber": "00417",    | ''
          "name": "Invented Person"   | "name": " "
          ["right"]                   | ["unsided"]
          "no-resistance"             | "no-resistence"
          "2026-03-02",               | "2026-13-02",
          "state": "draft"            | "state": "open"
          "side": "left", "value"     | "value"
          "item": "grip/power"        | "item": "power"
          "digit": "index"            | "digit": "pinky"
          "trial": 2                  | "trial": 100
          "trial": 2                  | "trail": 2
          "amount": "27.50"           | "amount": 27.50
          "unit": "kgf"               | "unit": "kg"
          "absent": "pain"            | "absent": "pain", "text": ""
          "confirmed": true           | "confirmed": "yes"
          "confirmed": true           | "overrode": []
          "confirmed": true           | "override": "x", "overrode": [{"kind": "no-resistance"}]
          "grip": "1"                 | "Grip": "1"
          "text": "38."               | "text": null
          """)
  void bothTheSchemaAndTheReaderRefuse(String from, String to) throws IOException {
    assertTrue(EvaluationFileTest.EXAMPLE.contains(from));
    String bad = EvaluationFileTest.EXAMPLE.replace(from, to);
    assertFalse(valid(bad), bad);
    assertFalse(EvaluationFileTest.read(bad).problems().isEmpty(), bad);
  }

  @Test
  void theSchemaListsTheCodesOfTheModel() {
    assertListed(Side.values());
    assertListed(Digit.values());
    assertListed(Region.values());
    assertListed(Precaution.Kind.values());
    assertListed(Absence.Reason.values());
    assertListed(List.of(Unit.values()).stream().map(Unit::ucum).toList());
  }

  private static void assertListed(Enum<?>[] constants) {
    assertListed(Arrays.stream(constants).map(Codes::of).toList());
  }

  private static void assertListed(List<String> codes) {
    Set<Set<String>> lists = new HashSet<>();
    Matcher matcher = Pattern.compile("\"enum\": \\[\\s*(.*?\")\\s*\\]").matcher(schemaText);
    while (matcher.find()) {
      TreeSet<String> list = new TreeSet<>();
      for (String quoted : matcher.group(1).split(",\\s*")) {
        list.add(quoted.substring(1, quoted.length() - 1));
      }
      lists.add(list);
    }
    assertTrue(lists.contains(new TreeSet<>(codes)), codes + " not in " + lists);
  }
}
