package styloid.exchange;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import styloid.exchange.json.Decoder;
import styloid.exchange.json.Decoders;
import styloid.exchange.json.Fields;
import styloid.exchange.json.Node;
import styloid.exchange.json.Problems;
import styloid.model.Caution;
import styloid.model.Condition;
import styloid.model.Demand;
import styloid.model.Digit;
import styloid.model.DigitJoint;
import styloid.model.Item;
import styloid.model.ItemId;
import styloid.model.ItemKind;
import styloid.model.Region;
import styloid.model.ResultId;
import styloid.model.Side;
import styloid.model.Source;
import styloid.model.SourceStatus;
import styloid.model.TestId;
import styloid.spi.Group;
import styloid.spi.Guide;
import styloid.spi.Labels;
import styloid.spi.ResultDefinition;
import styloid.spi.Setting;
import styloid.spi.TestDefinition;
import styloid.spi.Timer;

/** Reads the definition of a test with its labels; conditions are shared with declared tests. */
public final class DefinitionReader {
  static final int FORMAT = EvaluationReader.FORMAT;

  private static final Decoder<Set<Side>> SIDES = set(Decoders.code("side", Side.class));
  private static final Decoder<Set<Digit>> DIGITS = set(Decoders.code("digit", Digit.class));

  private DefinitionReader() {}

  static TestDefinition definition(Fields f) {
    if (!EvaluationReader.format(f)) {
      return null;
    }
    TestId test = f.need("test", Decoders.of(TestId::new));
    String version = f.need("version", Decoders::text);
    Integer order = f.need("order", Decoders::whole);
    List<Group> groups = f.list("groups", Fields.object(DefinitionReader::group));
    List<Caution> cautions = f.list("cautions", Fields.object(DefinitionReader::caution));
    List<String> testCautions = f.list("testCautions", Decoders::text);
    List<ResultDefinition> results = f.list("results", Fields.object(DefinitionReader::result));
    Set<TestId> reads = f.may("reads", set(Decoders.of(TestId::new))).orElseGet(Set::of);
    Labels labels = f.need("labels", DefinitionReader::labels);
    Optional<String> restAs = f.may("restAs", Decoders::text);
    List<Timer> timers = f.list("timers", Fields.object(DefinitionReader::timer));
    List<Setting> settings = f.list("settings", Fields.object(DefinitionReader::setting));
    return f.make(
        () ->
            new TestDefinition(
                test,
                version,
                order,
                groups,
                cautions,
                testCautions,
                results,
                reads,
                labels,
                restAs,
                timers,
                settings));
  }

  private static Timer timer(Fields f) {
    Timer.Kind kind = f.need("kind", Decoders.code("timer", Timer.Kind.class));
    Integer seconds = f.need("seconds", Decoders::whole);
    Set<ItemId> items = f.need("items", set(Decoders.of(ItemId::new)));
    Optional<Timer.LetGo> letGo = f.may("letGo", Fields.object(DefinitionReader::letGo));
    String citation = f.need("source", Decoders::text);
    SourceStatus status = f.need("status", Decoders.code("status", SourceStatus.class));
    return f.make(() -> new Timer(kind, seconds, items, letGo, new Source(citation, status)));
  }

  private static Timer.LetGo letGo(Fields f) {
    String atOnce = f.need("atOnce", Decoders::text);
    String during = f.need("during", Decoders::text);
    Optional<ItemId> time = f.may("time", Decoders.of(ItemId::new));
    return f.make(() -> new Timer.LetGo(atOnce, during, time));
  }

  private static Setting setting(Fields f) {
    String key = f.need("key", Decoders::text);
    List<String> codes = f.need("codes", Decoders.list(Decoders::text));
    String preset = f.need("preset", Decoders::text);
    return f.make(() -> new Setting(key, codes, preset));
  }

  private static Group group(Fields f) {
    String id = f.need("id", Decoders::text);
    Region region = f.need("region", Decoders.code("region", Region.class));
    Set<Region> loads = f.need("loads", set(Decoders.code("region", Region.class)));
    Group.Walk walk = f.need("walk", Decoders.code("walk", Group.Walk.class));
    Group.Layout layout = f.need("layout", Decoders.code("layout", Group.Layout.class));
    List<String> cautions = f.list("cautions", Decoders::text);
    Guide guide = f.may("guide", Fields.object(GuideReader::guide)).orElseGet(Guide::none);
    List<Item> items = f.need("items", Decoders.list(Fields.object(DefinitionReader::item)));
    return f.make(() -> new Group(id, region, loads, items, walk, layout, cautions, guide));
  }

  private static Item item(Fields f) {
    ItemId id = f.need("id", Decoders.of(ItemId::new));
    ItemKind kind = kind(f);
    Set<Side> sides = f.need("sides", SIDES);
    Set<Digit> digits = f.may("digits", DIGITS).orElse(Item.NO_DIGIT);
    int trials = f.may("trials", Decoders::whole).orElse(1);
    Condition askWhen =
        f.may("askWhen", Fields.object(DefinitionReader::condition)).orElseGet(Condition::always);
    Demand demand = f.may("demand", Decoders.code("demand", Demand.class)).orElse(Demand.NONE);
    boolean optional = f.may("optional", Decoders::truth).orElse(false);
    Optional<DigitJoint> joint = f.may("joint", Decoders.code("joint", DigitJoint.class));
    return f.make(
        () -> new Item(id, kind, sides, digits, trials, askWhen, demand, optional, joint));
  }

  private static ItemKind kind(Fields f) {
    String kind = f.oneOf("number", "choices", "words");
    if (kind == null) {
      return null;
    }
    return switch (kind) {
      case "number" -> f.need("number", Fields.object(DefinitionReader::number));
      case "choices" ->
          f.need("choices", made(Decoders.list(Decoders::text), ItemKind.Choices::new));
      default -> f.need("words", made(Decoders::whole, ItemKind.Words::new));
    };
  }

  private static ItemKind number(Fields f) {
    var units = f.need("units", Decoders.list(Decoders::unit));
    var min = f.need("min", Decoders::decimal);
    var likelyMin = f.need("likelyMin", Decoders::decimal);
    var likelyMax = f.need("likelyMax", Decoders::decimal);
    var max = f.need("max", Decoders::decimal);
    Integer decimals = f.need("decimals", Decoders::whole);
    return f.make(() -> new ItemKind.Number(units, min, max, likelyMin, likelyMax, decimals));
  }

  /** When an item is asked. */
  public static Condition condition(Fields f) {
    String kind = f.oneOf("is", "recorded", "chosen", "not", "all", "any", "always");
    if (kind == null) {
      f.may("item", Decoders::text);
      return f.make(() -> null);
    }
    switch (kind) {
      case "is":
        ItemId item = f.need("item", Decoders.of(ItemId::new));
        Set<String> codes = f.need("is", set(Decoders::text));
        return f.make(() -> new Condition.Is(item, codes));
      case "recorded":
        ItemId recorded = f.need("recorded", Decoders.of(ItemId::new));
        return f.make(() -> new Condition.Recorded(recorded));
      case "chosen":
        String setting = f.need("setting", Decoders::text);
        String code = f.need("chosen", Decoders::text);
        String preset = f.need("preset", Decoders::text);
        return f.make(() -> new Condition.Chosen(setting, code, preset));
      case "not":
        Condition negated = f.need("not", Fields.object(DefinitionReader::condition));
        return f.make(() -> new Condition.Not(negated));
      case "always":
        Boolean always = f.need("always", Decoders::truth);
        return f.make(() -> always ? Condition.always() : Condition.not(Condition.always()));
      default:
        List<Condition> parts =
            f.need(kind, Decoders.list(Fields.object(DefinitionReader::condition)));
        return f.make(
            () -> kind.equals("all") ? new Condition.All(parts) : new Condition.Any(parts));
    }
  }

  private static Caution caution(Fields f) {
    String id = f.need("id", Decoders::text);
    String citation = f.need("source", Decoders::text);
    SourceStatus status = f.need("status", Decoders.code("status", SourceStatus.class));
    return f.make(() -> new Caution(id, new Source(citation, status)));
  }

  private static ResultDefinition result(Fields f) {
    ResultId id = f.need("id", Decoders.of(ResultId::new));
    var unit = f.may("unit", Decoders::unit);
    Integer decimals = f.need("decimals", Decoders::whole);
    Set<Side> sides = f.need("sides", SIDES);
    Set<Digit> digits = f.need("digits", DIGITS);
    Optional<String> group = f.may("group", Decoders::text);
    Set<String> notable = f.may("notable", set(Decoders::text)).orElseGet(Set::of);
    return f.make(() -> new ResultDefinition(id, unit, decimals, sides, digits, group, notable));
  }

  private static Labels labels(Node node, Problems problems) {
    Map<String, Map<String, String>> words =
        Decoders.map(language -> language, Decoders.map(key -> key, Decoders::text))
            .decode(node, problems);
    return words == null
        ? null
        : Decoders.judged(node, problems, () -> new Labels(new HashMap<>(words)));
  }

  /** A list in which nothing stands twice. */
  private static <T> Decoder<Set<T>> set(Decoder<T> each) {
    return (node, problems) -> {
      List<T> list = Decoders.list(each).decode(node, problems);
      if (list == null) {
        return null;
      }
      HashSet<T> set = new HashSet<>(list);
      if (set.size() < list.size()) {
        problems.add(node.where(), "something stands twice in this list");
        return null;
      }
      return set;
    };
  }

  private static <A, B> Decoder<B> made(Decoder<A> decoder, Function<A, B> type) {
    return (node, problems) -> {
      A part = decoder.decode(node, problems);
      return part == null ? null : Decoders.judged(node, problems, () -> type.apply(part));
    };
  }
}
