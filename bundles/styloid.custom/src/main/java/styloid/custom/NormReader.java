package styloid.custom;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import styloid.exchange.json.Decoder;
import styloid.exchange.json.Decoders;
import styloid.exchange.json.Fields;
import styloid.exchange.json.Node;
import styloid.exchange.json.Problems;
import styloid.model.Unit;
import styloid.model.norm.NormTable;
import styloid.model.norm.NormTableException;

/** Reads the norm tables of a declared test, written in it or lying beside it as CSV. */
final class NormReader {
  private static final Pattern UNIT = Pattern.compile("(?m)^#\\s*unit:\\s*(.*?)\\s*$");
  private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9]*(_[a-z0-9]+)*");
  private static final Decoder<Map<String, String>> KEYS = Decoders.map(key -> key, Decoders::text);

  private final Function<String, Optional<String>> beside;

  NormReader(Function<String, Optional<String>> beside) {
    this.beside = beside;
  }

  Map<String, Draft.Norm> norms(Node node, Problems problems) {
    if (!(node instanceof Node.Obj object)) {
      return Decoders.wrong(node, "an object with a table for each name", problems);
    }
    LinkedHashMap<String, Draft.Norm> all = new LinkedHashMap<>();
    int before = problems.count();
    object
        .members()
        .forEach(
            (name, value) -> {
              if (!NAME.matcher(name).matches() || name.length() > 40) {
                problems.add(
                    value.where(), "a table's name is lower-case letters, digits and underscores");
              } else {
                Decoder<Draft.Norm> norm = Fields.object(f -> norm(f, name));
                all.put(name, norm.decode(value, problems));
              }
            });
    return problems.count() == before ? all : null;
  }

  private Draft.Norm norm(Fields f, String name) {
    String form = f.oneOf("file", "table");
    if (form == null) {
      f.may("keys", KEYS);
      return f.make(() -> null);
    }
    Map<String, String> keys = f.may("keys", KEYS).orElseGet(Map::of);
    NormTable table =
        form.equals("file") ? f.need("file", this::file) : f.need("table", NormReader::written);
    return f.make(
        () -> {
          if (table.rows().stream().noneMatch(row -> row.keys().equals(keys))) {
            List<Map<String, String>> known = new ArrayList<>();
            table.rows().stream()
                .map(row -> new TreeMap<>(row.keys()))
                .distinct()
                .limit(5)
                .forEach(known::add);
            throw new IllegalArgumentException(
                "the table has no rows with the keys " + keys + "; it has " + known);
          }
          return new Draft.Norm(f.where(), name, table, keys);
        });
  }

  private NormTable file(Node node, Problems problems) {
    String name = Decoders.text(node, problems);
    if (name == null) {
      return null;
    }
    if (!name.matches("[A-Za-z0-9][A-Za-z0-9_-]{0,79}\\.csv")) {
      problems.add(
          node.where(),
          "name a CSV file in the same folder: letters, digits, - and _, ending in .csv");
      return null;
    }
    Optional<String> text = beside.apply(name);
    if (text.isEmpty()) {
      problems.add(node.where(), "the file " + name + " is not beside this one, or is no text");
      return null;
    }
    return table(node, problems, name, text.get());
  }

  private static NormTable written(Node node, Problems problems) {
    List<String> lines = Decoders.list(Decoders::text).decode(node, problems);
    return lines == null ? null : table(node, problems, "table", String.join("\n", lines));
  }

  private static NormTable table(Node node, Problems problems, String name, String text) {
    Matcher unit = UNIT.matcher(text);
    try {
      Unit.Dimension measures =
          unit.find() ? Unit.ofUcum(unit.group(1)).dimension() : Unit.Dimension.NUMBER;
      return NormTable.parse(name, text, measures);
    } catch (NormTableException e) {
      problems.add(node.where(), e.getMessage());
    } catch (IllegalArgumentException e) {
      problems.add(node.where(), name + ": " + e.getMessage());
    }
    return null;
  }
}
