package styloid.custom;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import styloid.exchange.DefinitionReader;
import styloid.exchange.json.Decoder;
import styloid.exchange.json.Decoders;
import styloid.exchange.json.Fields;
import styloid.exchange.json.Node;
import styloid.exchange.json.Problems;
import styloid.exchange.json.Where;
import styloid.model.Condition;
import styloid.model.Demand;
import styloid.model.Digit;
import styloid.model.Item;
import styloid.model.ItemId;
import styloid.model.ItemKind;
import styloid.model.Side;
import styloid.model.Unit;

/** Reads the items of a declared test. */
final class ItemReader {
  private static final Decoder<String> KINDS =
      Decoders.word("kind", List.of("number", "choices", "text"));
  private static final Decoder<String> SIDE_WORDS =
      Decoders.word("word for sides", List.of("both", "none"));
  private static final Decoder<String> DIGIT_WORDS =
      Decoders.word("word for digits", List.of("fingers", "all", "none"));
  private static final Decoder<List<Side>> SIDES = Decoders.list(Decoders.code("side", Side.class));
  private static final Decoder<List<Digit>> DIGITS =
      Decoders.list(Decoders.code("digit", Digit.class));

  private final Words words;
  private final Map<ItemId, Map<String, BigDecimal>> numbers;
  private final Map<ItemId, Where> places;

  ItemReader(Words words, Map<ItemId, Map<String, BigDecimal>> numbers, Map<ItemId, Where> places) {
    this.words = words;
    this.numbers = numbers;
    this.places = places;
  }

  Item item(Fields f) {
    ItemId id = f.need("id", Decoders.of(ItemId::new));
    if (id != null && places.putIfAbsent(id, f.where("id")) != null) {
      f.problem("id", "the item " + id + " stands twice");
    }
    f.need("title", (node, problems) -> words.take("item." + id, node, problems));
    String kind = f.need("kind", KINDS);
    Set<Side> sides = f.need("sides", ItemReader::sides);
    Set<Digit> digits = f.may("digits", ItemReader::digits).orElse(Item.NO_DIGIT);
    int trials = f.may("trials", Decoders::whole).orElse(1);
    Condition askWhen =
        f.may("askWhen", Fields.object(DefinitionReader::condition)).orElseGet(Condition::always);
    Demand demand = f.may("demand", Decoders.code("demand", Demand.class)).orElse(Demand.NONE);
    boolean optional = f.may("optional", Decoders::truth).orElse(false);
    ItemKind made = kind == null || id == null ? null : kind(f, kind, id);
    return f.make(() -> new Item(id, made, sides, digits, trials, askWhen, demand, optional));
  }

  private ItemKind kind(Fields f, String kind, ItemId id) {
    switch (kind) {
      case "number":
        return number(f);
      case "choices":
        List<String> codes = f.need("choices", Decoders.list(Fields.object(c -> choice(c, id))));
        return codes == null ? null : judged(f, "choices", () -> new ItemKind.Choices(codes));
      default:
        Integer longest = f.may("longest", Decoders::whole).orElse(200);
        return judged(f, "longest", () -> new ItemKind.Words(longest));
    }
  }

  private static <T> T judged(Fields f, String key, java.util.function.Supplier<T> make) {
    try {
      return make.get();
    } catch (IllegalArgumentException e) {
      f.problem(key, e.getMessage());
      return null;
    }
  }

  private ItemKind number(Fields f) {
    List<Unit> units = f.need("unit", ItemReader::units);
    List<BigDecimal> range = f.need("range", ItemReader::pair);
    List<BigDecimal> likely = f.may("likely", ItemReader::pair).orElse(range);
    int decimals = f.may("decimals", Decoders::whole).orElse(0);
    if (decimals < 0 || decimals > 6) {
      f.problem("decimals", "must be 0 to 6");
      return null;
    }
    if (units == null || range == null || likely == null) {
      return null;
    }
    return judged(
        f,
        "range",
        () ->
            new ItemKind.Number(
                units, range.get(0), range.get(1), likely.get(0), likely.get(1), decimals));
  }

  private static List<Unit> units(Node node, Problems problems) {
    if (!(node instanceof Node.Arr)) {
      Unit unit = Decoders.unit(node, problems);
      return unit == null ? null : List.of(unit);
    }
    List<Unit> units = Decoders.list(Decoders::unit).decode(node, problems);
    if (units != null && units.isEmpty()) {
      problems.add(node.where(), "a unit is missing");
      return null;
    }
    if (units != null && new HashSet<>(units).size() < units.size()) {
      problems.add(node.where(), "a unit stands twice");
      return null;
    }
    if (units != null) {
      for (Unit unit : units) {
        if (unit.dimension() != units.get(0).dimension()) {
          problems.add(
              node.where(),
              "\"" + unit.ucum() + "\" does not convert to \"" + units.get(0).ucum() + "\"");
          return null;
        }
      }
    }
    return units;
  }

  /** A lower and an upper end. */
  private static List<BigDecimal> pair(Node node, Problems problems) {
    List<BigDecimal> pair = Decoders.list(ItemReader::number).decode(node, problems);
    if (pair != null && (pair.size() != 2 || pair.get(0).compareTo(pair.get(1)) > 0)) {
      problems.add(node.where(), "must be two numbers, the lower first, as [0, 100]");
      return null;
    }
    return pair;
  }

  /** A number with or without quotes. */
  static BigDecimal number(Node node, Problems problems) {
    String digits =
        node instanceof Node.Num n ? n.digits() : node instanceof Node.Str s ? s.text() : null;
    if (digits == null) {
      return Decoders.wrong(node, "a number", problems);
    }
    if (digits.length() > 20 || !digits.matches("-?[0-9]+(\\.[0-9]+)?")) {
      problems.add(node.where(), "write digits with a point, such as 38.5, of at most 20 signs");
      return null;
    }
    return new BigDecimal(digits);
  }

  private String choice(Fields f, ItemId item) {
    String code = f.need("code", Decoders.of(text -> new styloid.model.Choice(text).code()));
    f.need("title", (node, problems) -> words.take("choice." + item + "." + code, node, problems));
    Optional<BigDecimal> value = f.may("value", ItemReader::number);
    value.ifPresent(
        number -> numbers.computeIfAbsent(item, i -> new HashMap<>()).put(code, number));
    return f.make(() -> code);
  }

  /** A list of sides, or "both" or "none". */
  static Set<Side> sides(Node node, Problems problems) {
    if (node instanceof Node.Str) {
      String word = SIDE_WORDS.decode(node, problems);
      return word == null ? null : word.equals("both") ? Item.BOTH : Item.NO_SIDE;
    }
    List<Side> list = SIDES.decode(node, problems);
    return list == null ? null : set(node, problems, list, EnumSet.noneOf(Side.class));
  }

  /** A list of digits, or "fingers", "all" or "none". */
  static Set<Digit> digits(Node node, Problems problems) {
    if (node instanceof Node.Str) {
      String word = DIGIT_WORDS.decode(node, problems);
      if (word == null) {
        return null;
      }
      return switch (word) {
        case "fingers" -> Item.FINGERS;
        case "all" -> EnumSet.complementOf(EnumSet.of(Digit.NONE));
        default -> Item.NO_DIGIT;
      };
    }
    List<Digit> list = DIGITS.decode(node, problems);
    return list == null ? null : set(node, problems, list, EnumSet.noneOf(Digit.class));
  }

  private static <T> Set<T> set(Node node, Problems problems, List<T> list, Set<T> none) {
    HashSet<T> set = new HashSet<>(list);
    if (set.size() < list.size() || set.isEmpty()) {
      problems.add(node.where(), "each once, and at least one");
      return null;
    }
    none.addAll(new ArrayList<>(set));
    return none;
  }
}
