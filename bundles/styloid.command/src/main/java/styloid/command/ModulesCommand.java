package styloid.command;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import styloid.model.Item;
import styloid.model.ItemKind;
import styloid.model.Unit;
import styloid.spi.TestDefinition;
import styloid.spi.Texts;

/** Lists every module with all that can be recorded in it. */
@Command(name = "modules")
final class ModulesCommand implements Callable<Integer> {
  private static final String NONE = "-";

  private final Surroundings surroundings;

  @Option(names = "--json", descriptionKey = "json")
  private boolean json;

  ModulesCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws IOException {
    List<TestDefinition> tests = surroundings.session().tests();
    if (json) {
      ModulesJson form = new ModulesJson(surroundings.texts());
      Json.write(surroundings.out(), generator -> form.write(generator, tests));
    } else {
      tests.forEach(this::list);
    }
    boolean failed = surroundings.failed(surroundings.session().faults());
    return failed ? ExitCode.NOT_WORKING : ExitCode.OK;
  }

  private void list(TestDefinition test) {
    Texts texts = surroundings.texts();
    surroundings.say(
        surroundings.out(),
        "modules.test",
        texts.label(test.id().value(), "test.title"),
        test.id().value(),
        test.version());
    ArrayList<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of("item", "range", "sides", "digits", "trials").stream()
            .map(head -> texts.label(Surroundings.SCOPE, "modules.head." + head))
            .toList());
    test.items().forEach(item -> rows.add(row(item)));
    table(rows);
  }

  private static List<String> row(Item item) {
    List<String> digits = ModulesJson.digits(item.digits());
    return List.of(
        item.id().value(),
        range(item.kind()),
        String.join(" ", ModulesJson.sides(item.sides())),
        digits.isEmpty() ? NONE : String.join(" ", digits),
        String.valueOf(item.trials()));
  }

  private static String range(ItemKind kind) {
    return kind.match(
        number ->
            number.min().toPlainString()
                + ".."
                + number.max().toPlainString()
                + " "
                + number.units().stream().map(Unit::ucum).collect(Collectors.joining("|")),
        choices -> String.join("|", choices.codes()),
        words -> "text (" + words.longest() + ")");
  }

  private void table(List<List<String>> rows) {
    int[] widths = new int[rows.get(0).size()];
    for (List<String> row : rows) {
      for (int i = 0; i < widths.length; i++) {
        widths[i] = Math.max(widths[i], row.get(i).length());
      }
    }
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder();
      for (int i = 0; i < widths.length; i++) {
        line.append("  ").append(row.get(i)).append(" ".repeat(widths[i] - row.get(i).length()));
      }
      surroundings.out().println(line.toString().stripTrailing());
    }
    surroundings.out().println();
  }
}
