package styloid.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import styloid.model.Message;
import styloid.model.PatientContext;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.Value;
import styloid.spi.DeclaredTests;
import styloid.spi.ResultDefinition;
import styloid.spi.TestDefinition;
import styloid.spi.TestModule;
import styloid.spi.Texts;

/** Prints what a declared test makes of made-up answers, step by step. */
@Command(name = "try")
final class TryCommand implements Callable<Integer> {
  private final Surroundings surroundings;

  @Parameters(paramLabel = "FILE", descriptionKey = "test-file")
  private Path file;

  @Option(names = "--with", required = true, paramLabel = "ANSWERS", descriptionKey = "with")
  private Path answers;

  TryCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws IOException {
    Optional<DeclaredTests> declared = surroundings.declared().get();
    if (declared.isEmpty()) {
      surroundings.say(surroundings.err(), "declared.no-reader");
      return ExitCode.NOT_WORKING;
    }
    for (Path one : List.of(file, answers)) {
      if (!Files.isRegularFile(one)) {
        surroundings.say(surroundings.err(), "not-there", one.toString());
        return ExitCode.PROBLEMS;
      }
    }
    DeclaredInputs inputs = new DeclaredInputs(surroundings);
    DeclaredTests.Read read = inputs.read(declared.get(), file);
    if (!inputs.sound(file, read.problems())) {
      return ExitCode.PROBLEMS;
    }
    TestModule module = read.module().orElseThrow();
    Optional<String> text = DeclaredInputs.text(answers);
    DeclaredTests.Tried tried =
        text.isPresent()
            ? declared.get().answers(module.definition(), text.get())
            : new DeclaredTests.Tried(Optional.empty(), List.of(inputs.notText()));
    if (!inputs.sound(answers, tried.problems())) {
      return ExitCode.PROBLEMS;
    }
    print(module, tried.context().orElseThrow());
    return ExitCode.OK;
  }

  private void print(TestModule module, PatientContext context) {
    TestDefinition test = module.definition();
    Texts texts =
        new Texts(Map.of(test.id().value(), test.labels()), Surroundings.LANGUAGE)
            .with(Surroundings.SCOPE, Surroundings.LABELS);
    for (Result result : module.results(context)) {
      String place = texts.place(result.key().side(), result.key().digit());
      String name = texts.label(test.id().value(), "result." + result.key().result());
      line(
          "", (place.isEmpty() ? name : name + ", " + place) + ": " + outcome(result, test, texts));
      for (Message step : result.why().steps()) {
        line("    ", texts.text(step));
      }
      result
          .why()
          .sources()
          .forEach(s -> line("    ", texts.word(s.status()) + ": " + s.citation()));
      result.why().formula().ifPresent(formula -> line("    ", "=" + formula));
    }
  }

  private static String outcome(Result result, TestDefinition test, Texts texts) {
    return result
        .outcome()
        .match(
            value -> shown(value, result, test, texts),
            incomplete -> texts.text(incomplete.reason()),
            unavailable -> texts.text(unavailable.reason()));
  }

  private static String shown(Value value, Result result, TestDefinition test, Texts texts) {
    int decimals = test.result(result.key()).map(ResultDefinition::decimals).orElse(1);
    return value.match(
        (Quantity q) -> texts.quantity(q, decimals),
        c -> texts.label(test.id().value(), "choice." + result.key().result() + "." + c.code()),
        t -> t.text(),
        a -> texts.word(a.reason()));
  }

  private void line(String indent, String text) {
    surroundings.out().println(indent + text);
  }
}
