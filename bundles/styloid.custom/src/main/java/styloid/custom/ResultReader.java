package styloid.custom;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import styloid.exchange.json.Decoders;
import styloid.exchange.json.Fields;
import styloid.exchange.json.Node;
import styloid.exchange.json.Problems;
import styloid.model.Choice;
import styloid.model.Digit;
import styloid.model.ResultId;
import styloid.model.Side;
import styloid.model.Source;
import styloid.model.Unit;

/** Reads the results of a declared test as written. */
final class ResultReader {
  private final Words words;

  ResultReader(Words words) {
    this.words = words;
  }

  Draft.Outcome result(Fields f) {
    ResultId id = f.need("id", Decoders.of(ResultId::new));
    f.need("title", (node, problems) -> words.take("result." + id, node, problems));
    Optional<Set<Side>> sides = f.may("sides", ItemReader::sides);
    Optional<Set<Digit>> digits = f.may("digits", ItemReader::digits);
    Optional<Source> source = TestReader.source(f, false);
    String kind = f.oneOf("formula", "classes");
    boolean number = "formula".equals(kind);
    Optional<Unit> unit = Optional.empty();
    int decimals = 0;
    Optional<Draft.Text> formula = Optional.empty();
    Optional<Draft.Text> of = Optional.empty();
    List<Draft.Limit> classes = List.of();
    if (number) {
      formula = Optional.ofNullable(f.need("formula", ResultReader::text));
      unit = Optional.ofNullable(f.need("unit", Decoders::unit));
      decimals = f.may("decimals", Decoders::whole).orElse(1);
    } else if (kind != null) {
      of = f.may("of", ResultReader::text);
      classes = f.need("classes", Decoders.list(Fields.object(c -> limit(c, id))));
    }
    return made(f, id, unit, decimals, sides, digits, formula, of, classes, source);
  }

  private static Draft.Outcome made(
      Fields f,
      ResultId id,
      Optional<Unit> unit,
      int decimals,
      Optional<Set<Side>> sides,
      Optional<Set<Digit>> digits,
      Optional<Draft.Text> formula,
      Optional<Draft.Text> of,
      List<Draft.Limit> classes,
      Optional<Source> source) {
    return f.make(
        () -> {
          if (decimals < 0 || decimals > 6) {
            throw new IllegalArgumentException("decimals are 0 to 6");
          }
          return new Draft.Outcome(
              f.where(), id, unit, decimals, sides, digits, formula, of, classes, source);
        });
  }

  private static Draft.Text text(Node node, Problems problems) {
    String text = Decoders.text(node, problems);
    return text == null ? null : new Draft.Text(node.where(), text);
  }

  private Draft.Limit limit(Fields f, ResultId result) {
    String code = f.need("class", Decoders.of(text -> new Choice(text).code()));
    String label = "choice." + result + "." + code;
    f.may("title", (node, problems) -> words.take(label, node, problems));
    if (!words.has(label) && f.sound()) {
      f.problem("title", "\"title\" is missing");
    }
    Optional<Draft.When> when = f.may("when", ResultReader::when);
    Optional<BigDecimal> from = f.may("from", ItemReader::number);
    Optional<BigDecimal> above = f.may("above", ItemReader::number);
    Optional<BigDecimal> to = f.may("to", ItemReader::number);
    Optional<BigDecimal> below = f.may("below", ItemReader::number);
    return f.make(
        () -> {
          boolean bounded =
              from.isPresent() || above.isPresent() || to.isPresent() || below.isPresent();
          if (when.isPresent() == bounded) {
            throw new IllegalArgumentException(
                "a class has either \"when\" or limits: \"from\" and \"to\" are included,"
                    + " \"above\" and \"below\" are not");
          }
          if (from.isPresent() && above.isPresent() || to.isPresent() && below.isPresent()) {
            throw new IllegalArgumentException(
                "a limit is included (\"from\", \"to\") or not (\"above\", \"below\"), not both");
          }
          Draft.Band band =
              new Draft.Band(
                  from.or(() -> above), from.isPresent(), to.or(() -> below), to.isPresent());
          if (band.empty()) {
            throw new IllegalArgumentException("no number lies between these limits");
          }
          return new Draft.Limit(f.where(), code, band, when);
        });
  }

  /** One item with the code, or codes, of its answers. */
  private static Draft.When when(Node node, Problems problems) {
    if (!(node instanceof Node.Obj object) || object.members().size() != 1) {
      return Decoders.wrong(node, "an object with one item, as {\"felt\": \"no\"}", problems);
    }
    Map.Entry<String, Node> only = object.members().entrySet().iterator().next();
    ArrayList<Draft.Text> codes = new ArrayList<>();
    if (only.getValue() instanceof Node.Arr list) {
      list.values().forEach(each -> codes.add(text(each, problems)));
    } else {
      codes.add(text(only.getValue(), problems));
    }
    if (codes.contains(null)) {
      return null;
    }
    if (codes.isEmpty()) {
      problems.add(node.where(), "an answer is missing");
      return null;
    }
    return new Draft.When(new Draft.Text(only.getValue().where(), only.getKey()), codes);
  }
}
