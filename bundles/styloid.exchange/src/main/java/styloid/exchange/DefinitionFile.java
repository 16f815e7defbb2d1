package styloid.exchange;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import styloid.exchange.json.Excerpt;
import styloid.exchange.json.Fields;
import styloid.exchange.json.JsonReader;
import styloid.exchange.json.Problems;
import styloid.exchange.json.Where;
import styloid.model.DefinitionText;
import styloid.model.FileProblem;
import styloid.spi.TestDefinition;

/** The neutral written form of a test's definition and labels (JSON). */
public final class DefinitionFile {
  private DefinitionFile() {}

  /** What came of reading a stored definition. */
  public record Read(Optional<TestDefinition> definition, List<FileProblem> problems) {}

  /** The same definition always gives the same characters. */
  public static DefinitionText write(TestDefinition definition) {
    StringBuilder text = new StringBuilder();
    try {
      new DefinitionWriter(new JsonWriter(text)).definition(definition);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new DefinitionText(definition.id(), definition.version(), text.toString());
  }

  /** The definition in a text, or every problem found; its id and version must be those stored. */
  public static Read read(DefinitionText text) {
    Problems problems = new Problems();
    Optional<TestDefinition> definition = definition(text, problems);
    definition.ifPresent(found -> sameAs(text, found, problems));
    return new Read(problems.count() == 0 ? definition : Optional.empty(), problems.list());
  }

  private static Optional<TestDefinition> definition(DefinitionText text, Problems problems) {
    try {
      return JsonReader.read(new StringReader(text.text()), problems)
          .map(Fields.object(DefinitionReader::definition).with(problems));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void sameAs(DefinitionText text, TestDefinition found, Problems problems) {
    if (!found.id().equals(text.test()) || !found.version().equals(text.version())) {
      problems.add(
          Where.root(0, 0),
          "the text defines %s %s, but is kept as %s %s"
              .formatted(found.id(), found.version(), text.test(), Excerpt.of(text.version())));
    }
  }
}
