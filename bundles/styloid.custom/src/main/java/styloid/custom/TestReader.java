package styloid.custom;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import styloid.exchange.GuideReader;
import styloid.exchange.json.Decoders;
import styloid.exchange.json.Fields;
import styloid.exchange.json.Node;
import styloid.exchange.json.Problems;
import styloid.exchange.json.Where;
import styloid.model.Caution;
import styloid.model.Item;
import styloid.model.ItemId;
import styloid.model.Region;
import styloid.model.Source;
import styloid.model.SourceStatus;
import styloid.model.TestId;
import styloid.spi.Group;
import styloid.spi.Guide;
import styloid.spi.Picture;
import styloid.spi.Pose;

/** Reads a declared test as written; used for one file and thrown away. */
final class TestReader {
  static final int FORMAT = 1;
  static final int MOST_PLACES = 2000;
  private static final int USUAL_ORDER = 500;

  private final Words words;
  private final Map<ItemId, Map<String, BigDecimal>> numbers = new HashMap<>();
  private final Map<ItemId, Where> places = new HashMap<>();
  private final ItemReader items;
  private final NormReader norms;
  private final List<Caution> cautions = new ArrayList<>();

  /**
   * A reader.
   *
   * @param beside text of a file that lies beside the declared one; empty when there is none
   */
  TestReader(Words words, Function<String, Optional<String>> beside) {
    this.words = words;
    this.items = new ItemReader(words, numbers, places);
    this.norms = new NormReader(beside);
  }

  Draft test(Fields f) {
    Integer format = f.need("format", Decoders::whole);
    if (format != null && format != FORMAT) {
      f.problem("format", "format " + format + " is not known here (only " + FORMAT + ")");
      return null;
    }
    f.may("$schema", Decoders::text);
    TestId id = f.need("id", Decoders.of(TestId::new));
    String version = f.need("version", TestReader::version);
    f.need("title", (node, problems) -> words.take("test.title", node, problems));
    Source source = source(f, true).orElse(null);
    int order = f.may("order", Decoders::whole).orElse(USUAL_ORDER);
    String form = f.oneOf("items", "groups");
    List<String> ofTest = f.list("cautions", Fields.object(c -> caution(c)));
    List<Group> groups = form == null ? null : groups(f, form.equals("items"));
    Map<String, Draft.Norm> tables = f.may("norms", norms::norms).orElseGet(Map::of);
    ResultReader results = new ResultReader(words);
    List<Draft.Outcome> outcomes = f.need("results", Decoders.list(Fields.object(results::result)));
    return f.make(
        () ->
            checked(
                new Draft(
                    id,
                    version,
                    order,
                    source,
                    cautions,
                    ofTest,
                    groups,
                    numbers,
                    places,
                    List.copyOf(tables.values()),
                    outcomes)));
  }

  private List<Group> groups(Fields f, boolean single) {
    if (!single) {
      return f.need("groups", Decoders.list(Fields.object(g -> group(g, Optional.empty()))));
    }
    Group only = group(f, Optional.of("all"));
    return only == null ? null : List.of(only);
  }

  private static Draft checked(Draft draft) {
    int places = 0;
    for (Group group : draft.groups()) {
      for (Item item : group.items()) {
        places += item.sides().size() * item.digits().size() * item.trials();
      }
    }
    if (places > MOST_PLACES || draft.results().size() > 100) {
      throw new IllegalArgumentException(
          "a test has at most " + MOST_PLACES + " places to fill and 100 results");
    }
    return draft;
  }

  private static String version(Node node, Problems problems) {
    String text = Decoders.text(node, problems);
    if (text != null && !text.matches("[0-9]{1,5}(\\.[0-9]{1,5}){0,2}")) {
      problems.add(node.where(), "a version is numbers and points in quotes, such as \"1.0\"");
      return null;
    }
    return text;
  }

  /** Citation and status; both or, where they may be left out, neither. */
  static Optional<Source> source(Fields f, boolean needed) {
    if (!needed && !f.has("citation") && !f.has("status")) {
      return Optional.empty();
    }
    String citation = f.need("citation", Decoders.of(TestReader::notBlank));
    SourceStatus status = f.need("status", Decoders.code("status", SourceStatus.class));
    return citation == null || status == null
        ? Optional.empty()
        : Optional.of(new Source(citation, status));
  }

  private static String notBlank(String text) {
    if (text.isBlank() || text.length() > 500) {
      throw new IllegalArgumentException("a citation is 1 to 500 characters");
    }
    return text;
  }

  private String caution(Fields f) {
    String id = f.need("id", Decoders.of(text -> new Caution(text, Source.commonPractice()).id()));
    f.need("text", (node, problems) -> words.take("caution." + id, node, problems));
    Optional<Source> source = source(f, true);
    return f.make(
        () -> {
          cautions.add(new Caution(id, source.orElseThrow()));
          return id;
        });
  }

  /** A group; the test itself when its items stand directly in it. */
  private Group group(Fields f, Optional<String> single) {
    String id = single.orElseGet(() -> f.need("id", Decoders::text));
    if (single.isEmpty()) {
      f.need("title", (node, problems) -> words.take("group." + id, node, problems));
    } else {
      words.copy("test.title", "group." + id);
      f.may("group", (node, problems) -> words.take("group." + id, node, problems));
    }
    Region region = f.need("region", Decoders.code("region", Region.class));
    Set<Region> loads =
        f.may("loads", Decoders.list(Decoders.code("region", Region.class)))
            .<Set<Region>>map(HashSet::new)
            .orElseGet(() -> region == null ? Set.of() : Set.of(region));
    Group.Walk walk =
        f.may("walk", Decoders.code("walk", Group.Walk.class)).orElse(Group.Walk.ALTERNATING);
    Optional<Group.Layout> layout = f.may("layout", Decoders.code("layout", Group.Layout.class));
    List<Item> list = f.need("items", Decoders.list(Fields.object(items::item)));
    Guide guide = guide(f, id);
    List<String> own =
        single.isPresent() ? List.of() : f.list("cautions", Fields.object(this::caution));
    if (list == null || list.isEmpty() || list.contains(null) || region == null || guide == null) {
      if (list != null && list.isEmpty()) {
        f.problem("items", "an item is missing");
      }
      return single.isPresent() ? null : f.make(() -> null);
    }
    Group.Layout drawn = layout.orElseGet(() -> usualLayout(list));
    return single.isPresent()
        ? f.judged(() -> new Group(id, region, loads, list, walk, drawn, own, guide))
        : f.make(() -> new Group(id, region, loads, list, walk, drawn, own, guide));
  }

  private static Group.Layout usualLayout(List<Item> list) {
    if (list.stream().anyMatch(item -> !item.digits().equals(Item.NO_DIGIT))) {
      return Group.Layout.DIGIT_GRID;
    }
    return list.stream().allMatch(item -> item.sides().equals(Item.BOTH))
        ? Group.Layout.LEFT_RIGHT_TABLE
        : Group.Layout.LIST;
  }

  private static Pose pose(Node node, Problems problems) {
    Map<Pose.Joint, Integer> angles = GuideReader.pose().decode(node, problems);
    return angles == null ? null : Decoders.judged(node, problems, () -> new Pose(angles));
  }

  private Guide guide(Fields f, String group) {
    var position = f.may("position", Fields.object(GuideReader::position));
    var pose = f.may("pose", TestReader::pose).orElseGet(Pose::neutral);
    var fingers = f.may("fingers", GuideReader.fingers()).orElseGet(Map::of);
    var view = f.may("view", GuideReader.view()).orElse(Picture.View.FITTING);
    var marks = f.list("marks", Fields.object(GuideReader::mark));
    List<Guide.Line> lines = new ArrayList<>();
    f.may(
        "instructions",
        Decoders.list(
            (node, problems) -> {
              String key = "instruction." + group + "." + (lines.size() + 1);
              lines.add(new Guide.Line(Guide.Topic.INSTRUCTION, key));
              return words.take(key, node, problems);
            }));
    if (marks.contains(null)) {
      return null;
    }
    return f.part(
        () ->
            new Guide(
                position,
                Optional.empty(),
                lines,
                new Picture(new Pose(pose.degrees(), fingers), marks, view),
                List.of(),
                List.of()));
  }
}
