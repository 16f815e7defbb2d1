package styloid.custom;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import styloid.exchange.json.Fields;
import styloid.exchange.json.JsonReader;
import styloid.exchange.json.Node;
import styloid.exchange.json.Problems;
import styloid.exchange.json.Where;
import styloid.model.FileProblem;
import styloid.model.TestId;
import styloid.spi.Formulas;
import styloid.spi.Labels;
import styloid.spi.ResultDefinition;
import styloid.spi.TestDefinition;

/** Reads and judges the text of a declared test. Pure. */
final class DeclaredFile {
  /** Longest text of a file, in characters. */
  static final int LONGEST = 1_000_000;

  private final Formulas formulas;
  private final Set<TestId> taken;

  /**
   * A reader.
   *
   * @param taken ids other tests have
   */
  DeclaredFile(Formulas formulas, Set<TestId> taken) {
    this.formulas = formulas;
    this.taken = Set.copyOf(taken);
  }

  /** What came of reading: the module, or every problem found. */
  record Read(Optional<DeclaredModule> module, List<FileProblem> problems) {}

  /**
   * Reads a text.
   *
   * @param beside text of a file that lies beside it, by its name
   */
  Read read(String text, Function<String, Optional<String>> beside) {
    Problems problems = new Problems();
    if (text.length() > LONGEST) {
      problems.add(Where.root(0, 0), "the file is longer than " + LONGEST + " characters");
      return new Read(Optional.empty(), problems.list());
    }
    Optional<DeclaredModule> module =
        node(text, problems)
            .map(
                node -> {
                  Words words = new Words();
                  Draft draft =
                      Fields.object(new TestReader(words, beside)::test).decode(node, problems);
                  return draft == null ? null : module(draft, words, node, problems);
                });
    return new Read(problems.count() == 0 ? module : Optional.empty(), problems.list());
  }

  private static Optional<Node> node(String text, Problems problems) {
    try {
      return JsonReader.read(new StringReader(text), problems);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private DeclaredModule module(Draft draft, Words words, Node node, Problems problems) {
    Where idAt = ((Node.Obj) node).members().get("id").where();
    if (taken.contains(draft.id())) {
      problems.add(idAt, "the id \"" + draft.id() + "\" is taken by another test");
    }
    List<Rule> rules = new Linker(draft, problems).link();
    if (problems.count() > 0) {
      return null;
    }
    Labels labels = words.labels(problems);
    List<ResultDefinition> results =
        draft.results().stream()
            .map(
                outcome ->
                    rules.stream()
                        .map(Rule::result)
                        .filter(result -> result.id().equals(outcome.id()))
                        .findFirst()
                        .orElseThrow())
            .toList();
    try {
      TestDefinition definition =
          new TestDefinition(
              draft.id(),
              draft.version(),
              draft.order(),
              draft.groups(),
              draft.cautions(),
              draft.testCautions(),
              results,
              Set.of(),
              labels);
      return new DeclaredModule(definition, rules, formulas);
    } catch (IllegalArgumentException e) {
      problems.add(idAt, e.getMessage());
      return null;
    }
  }
}
