package styloid.custom;

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
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.spi.DeclaredTests;
import styloid.spi.Texts;

/** The published schema, judged by a validator that is not ours, and the published how-to. */
class SchemaTest {
  private static final Path DOCS = Path.of("..", "..", "docs");
  private static JsonSchema schema;

  @BeforeAll
  static void load() throws IOException {
    schema =
        JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
            .getSchema(Files.readString(DOCS.resolve("declared-test.schema.json")));
  }

  private static void assertValid(String text) {
    assertEquals(Set.of(), schema.validate(text, InputFormat.JSON), text);
  }

  @Test
  void shippedFilesAreValidAndShort() {
    for (String name : Shipped.names()) {
      String text = Shipped.text(name + ".json").orElseThrow();
      assertValid(text);
      assertTrue(text.lines().count() <= 60, name);
    }
    assertValid(CorpusTest.BASE);
  }

  @Test
  void whatTheReaderTakesTheSchemaTakes() {
    Random random = new Random(11);
    int taken = 0;
    for (int i = 0; i < 3000; i++) {
      String text = MutationTest.mutated(CorpusTest.BASE, random);
      if (CorpusTest.read(text).module().isPresent()) {
        taken++;
        assertValid(text);
      }
    }
    assertTrue(taken > 100, taken + " taken");
  }

  @Test
  void theSchemaRefusesUnknownKeysUnitsAndMissingParts() {
    for (String[] change :
        new String[][] {
          {"\"order\"", "\"ordre\""},
          {"\"trials\"", "\"trails\""},
          {"\"unit\": \"s\", \"range\"", "\"unit\": \"sec\", \"range\""},
          {"\"sides\": \"both\", \"trials\"", "\"trials\""},
          {"\"formula\": \"AVERAGE(time)\", ", ""},
        }) {
      String text = CorpusTest.BASE.replace(change[0], change[1]);
      assertFalse(text.equals(CorpusTest.BASE), change[0]);
      assertFalse(schema.validate(text, InputFormat.JSON).isEmpty(), change[1]);
    }
  }

  @Test
  void theHowToDoesWhatItSays() throws IOException {
    String page = Files.readString(DOCS.resolve("howto/add-a-test.md"));
    Matcher blocks = Pattern.compile("(?s)```(?:json)?\n(.*?)```").matcher(page);
    List<String> found = blocks.results().map(m -> m.group(1)).toList();
    String test = found.get(0);
    assertValid(test);
    DeclaredFile.Read read = CorpusTest.read(test);
    assertEquals(List.of(), read.problems());
    DeclaredModule module = read.module().orElseThrow();
    DeclaredTests.Tried tried = new AnswerReader(module.definition()).read(found.get(2));
    assertEquals(List.of(), tried.problems());
    Texts texts = new Texts(Map.of("coin-sort", module.definition().labels()), Locale.ENGLISH);
    StringBuilder said = new StringBuilder();
    for (Result result : module.results(tried.context().orElseThrow())) {
      int decimals = module.definition().result(result.key()).orElseThrow().decimals();
      Optional<String> value =
          result
              .value()
              .map(
                  v ->
                      v instanceof Quantity q
                          ? texts.quantity(q, decimals)
                          : texts.label(
                              "coin-sort",
                              "choice."
                                  + result.key().result()
                                  + "."
                                  + ((styloid.model.Choice) v).code()));
      said.append(texts.label("coin-sort", "result." + result.key().result()))
          .append(", ")
          .append(texts.place(result.key().side(), result.key().digit()))
          .append(": ")
          .append(value.orElse("-"))
          .append('\n');
    }
    for (String line : found.get(3).lines().toList()) {
      assertTrue(said.toString().contains(line + "\n"), line + " not in\n" + said);
    }
  }

  @Test
  void everyFunctionIsNamedInTheHowTo() throws IOException {
    String page = Files.readString(DOCS.resolve("howto/add-a-test.md"));
    for (String function : Functions.names()) {
      assertTrue(Pattern.compile("\\b" + function + "\\b").matcher(page).find(), function);
    }
  }
}
