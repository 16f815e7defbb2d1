package styloid.custom;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A formula written out again, with each name replaced by what it stands for.
 *
 * @param values the values of its names
 */
record Spelling(String text, Map<String, Object> values) {

  /** For the evaluator: names are {@code v1}, {@code v2} and so on, always the same ones. */
  static Spelling neutral(Term formula, Map<String, List<Input>> inputs) {
    LinkedHashMap<String, Object> values = new LinkedHashMap<>();
    Map<String, List<String>> names = new LinkedHashMap<>();
    formula.names(
        name -> {
          if (!names.containsKey(name.name())) {
            ArrayList<String> neutral = new ArrayList<>();
            for (Input input : inputs.get(name.name())) {
              String each = "v" + (values.size() + 1);
              Object value =
                  input
                      .number()
                      .<Object>map(n -> n.doubleValue())
                      .orElseGet(() -> input.text().orElseThrow());
              values.put(each, value);
              neutral.add(each);
            }
            names.put(name.name(), neutral);
          }
        });
    return new Spelling(write(formula, names::get), values);
  }

  /** For a workbook, over names of cells; empty where a value has no cell to be read from. */
  static Optional<String> live(Term formula, Map<String, List<Input>> inputs) {
    boolean all =
        inputs.values().stream().flatMap(List::stream).allMatch(i -> i.live().isPresent());
    return all
        ? Optional.of(
            write(
                formula,
                name -> inputs.get(name).stream().map(i -> i.live().orElseThrow()).toList()))
        : Optional.empty();
  }

  private static String write(Term term, Function<String, List<String>> names) {
    if (term instanceof Term.Num number) {
      return number.digits();
    } else if (term instanceof Term.Str text) {
      return '"' + text.text() + '"';
    } else if (term instanceof Term.Truth truth) {
      return truth.value() ? "TRUE" : "FALSE";
    } else if (term instanceof Term.Name name) {
      List<String> found = names.apply(name.name());
      return found.size() == 1 ? bracketed(found.get(0)) : String.join(",", found);
    } else if (term instanceof Term.Call call) {
      return call.args().stream()
          .map(arg -> write(arg, names))
          .collect(Collectors.joining(",", call.function() + "(", ")"));
    } else if (term instanceof Term.Pair pair) {
      return "(" + write(pair.left(), names) + pair.operator() + write(pair.right(), names) + ")";
    }
    Term.Sign sign = (Term.Sign) term;
    String of = write(sign.of(), names);
    return "(" + (sign.sign().equals("%") ? of + "%" : sign.sign() + of) + ")";
  }

  private static String bracketed(String text) {
    return text.chars().allMatch(c -> c == '_' || c == '.' || Character.isLetterOrDigit(c))
        ? text
        : "(" + text + ")";
  }
}
