package styloid.exchange.json;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.Supplier;
import styloid.model.Codes;
import styloid.model.Unit;

/** Decoders of single values. */
public final class Decoders {
  private Decoders() {}

  public static String text(Node node, Problems problems) {
    return node instanceof Node.Str s ? s.text() : wrong(node, "text in double quotes", problems);
  }

  public static Boolean truth(Node node, Problems problems) {
    return node instanceof Node.Bool b
        ? (Boolean) b.value()
        : wrong(node, "true or false", problems);
  }

  public static Integer whole(Node node, Problems problems) {
    if (node instanceof Node.Num n && n.digits().matches("-?[0-9]{1,9}")) {
      return Integer.valueOf(n.digits());
    }
    if (node instanceof Node.Num n) {
      problems.add(node.where(), "must be a whole number, not " + Excerpt.of(n.digits()));
      return null;
    }
    return wrong(node, "a whole number", problems);
  }

  public static Double fraction(Node node, Problems problems) {
    return node instanceof Node.Num n
        ? Double.valueOf(n.digits())
        : wrong(node, "a number", problems);
  }

  /** A number in quotes, so that no program on its way drops a trailing zero. */
  public static BigDecimal decimal(Node node, Problems problems) {
    if (node instanceof Node.Num n) {
      problems.add(node.where(), "write the number in quotes: \"" + n.digits() + "\"");
      return null;
    }
    String digits = text(node, problems);
    if (digits == null) {
      return null;
    }
    if (digits.length() > 100 || !digits.matches("-?[0-9]+(\\.[0-9]+)?([eE][+-]?[0-9]{1,4})?")) {
      problems.add(
          node.where(),
          "\"" + Excerpt.of(digits) + "\" is not a number; write digits with a point, as \"38.5\"");
      return null;
    }
    return new BigDecimal(digits);
  }

  public static LocalDate date(Node node, Problems problems) {
    return parsed(node, problems, "a date such as \"2026-03-02\"", LocalDate::parse);
  }

  public static Instant instant(Node node, Problems problems) {
    return parsed(node, problems, "a time in UTC such as \"2026-03-02T09:15:00Z\"", Instant::parse);
  }

  public static UUID uuid(Node node, Problems problems) {
    return parsed(
        node,
        problems,
        "a UUID such as \"6f9619ff-8b86-4d01-b42d-00cf4fc964ff\"",
        text -> {
          if (text.length() != 36) {
            throw new IllegalArgumentException("not 36 characters");
          }
          return UUID.fromString(text);
        });
  }

  public static Unit unit(Node node, Problems problems) {
    List<String> known = Arrays.stream(Unit.values()).map(Unit::ucum).toList();
    return oneOf(node, problems, "unit", known, Unit::ofUcum);
  }

  /** A constant by its code. */
  public static <E extends Enum<E>> Decoder<E> code(String what, Class<E> type) {
    List<String> known = Arrays.stream(type.getEnumConstants()).map(Codes::of).toList();
    return (node, problems) -> oneOf(node, problems, what, known, c -> Codes.parse(type, c));
  }

  /** One of these words. */
  public static Decoder<String> word(String what, List<String> known) {
    return (node, problems) -> oneOf(node, problems, what, known, word -> word);
  }

  /** Text taken into a type of ours whose constructor judges it. */
  public static <T> Decoder<T> of(Function<String, T> type) {
    return (node, problems) -> {
      String text = text(node, problems);
      return text == null ? null : judged(node, problems, () -> type.apply(text));
    };
  }

  public static <T> Decoder<List<T>> list(Decoder<T> each) {
    return (node, problems) -> {
      if (!(node instanceof Node.Arr array)) {
        return wrong(node, "a list […]", problems);
      }
      ArrayList<T> all = new ArrayList<>();
      int before = problems.count();
      for (Node value : array.values()) {
        all.add(each.decode(value, problems));
      }
      return problems.count() == before ? all : null;
    };
  }

  /** An object with keys of the writer's choice. */
  public static <K, V> Decoder<Map<K, V>> map(Function<String, K> key, Decoder<V> each) {
    return (node, problems) -> {
      if (!(node instanceof Node.Obj object)) {
        return wrong(node, "an object {…}", problems);
      }
      LinkedHashMap<K, V> all = new LinkedHashMap<>();
      int before = problems.count();
      object
          .members()
          .forEach(
              (name, value) -> {
                K known = judged(value, problems, () -> key.apply(name));
                all.put(known, each.decode(value, problems));
              });
      return problems.count() == before ? all : null;
    };
  }

  /** What the supplier makes; an argument the model refuses is a problem at this place. */
  public static <T> T judged(Node node, Problems problems, Supplier<T> make) {
    try {
      return make.get();
    } catch (IllegalArgumentException e) {
      problems.add(node.where(), Excerpt.ofMessage(e.getMessage()));
      return null;
    }
  }

  public static <T> T wrong(Node node, String wanted, Problems problems) {
    problems.add(node.where(), "must be " + wanted + ", not " + node.kind());
    return null;
  }

  private static <T> T parsed(
      Node node, Problems problems, String wanted, Function<String, T> parse) {
    String text = text(node, problems);
    if (text == null) {
      return null;
    }
    try {
      return parse.apply(text);
    } catch (DateTimeException | IllegalArgumentException e) {
      problems.add(node.where(), "\"" + Excerpt.of(text) + "\" is not " + wanted);
      return null;
    }
  }

  private static <T> T oneOf(
      Node node, Problems problems, String what, List<String> known, Function<String, T> parse) {
    String text = text(node, problems);
    if (text == null) {
      return null;
    }
    if (!known.contains(text)) {
      problems.add(
          node.where(),
          "\"" + Excerpt.of(text) + "\" is no " + what + "; " + NearMiss.hint(text, known));
      return null;
    }
    return parse.apply(text);
  }
}
