package styloid.session;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import styloid.model.Caution;
import styloid.model.Demand;
import styloid.model.Digit;
import styloid.model.Explanation;
import styloid.model.Item;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.ItemKind;
import styloid.model.Message;
import styloid.model.PatientContext;
import styloid.model.Quantity;
import styloid.model.Region;
import styloid.model.Result;
import styloid.model.ResultId;
import styloid.model.ResultKey;
import styloid.model.Side;
import styloid.model.Source;
import styloid.model.TestId;
import styloid.model.Unit;
import styloid.spi.Group;
import styloid.spi.Guide;
import styloid.spi.Labels;
import styloid.spi.ResultDefinition;
import styloid.spi.Setting;
import styloid.spi.TestDefinition;
import styloid.spi.TestModule;

/** A test with one item, a span in millimetres on both sides, and its double as a result. */
class SampleModule implements TestModule {
  static final ItemId SPAN = new ItemId("span");
  static final ResultId TWICE = new ResultId("twice");

  private final TestId id;
  private final Set<TestId> reads;

  SampleModule(String id, String... reads) {
    this.id = new TestId(id);
    this.reads = Set.of(reads).stream().map(TestId::new).collect(Collectors.toSet());
  }

  ItemKey key(Side side) {
    return new ItemKey(id, SPAN, side, Digit.NONE, 1);
  }

  ResultKey twice(Side side) {
    return new ResultKey(id, TWICE, side, Digit.NONE);
  }

  @Override
  public TestDefinition definition() {
    Item span =
        Item.bothSides(
            "span", ItemKind.Number.of(Unit.MILLIMETRE, 0, 50, 250, 400, 0), Demand.ACTIVE_MOTION);
    Group group =
        new Group(
            "spans",
            Region.HAND,
            Set.of(Region.HAND),
            List.of(span),
            Group.Walk.ALTERNATING,
            Group.Layout.LEFT_RIGHT_TABLE,
            List.of("gently"),
            Guide.none());
    ResultDefinition twice =
        new ResultDefinition(
            TWICE, Optional.of(Unit.MILLIMETRE), 0, Item.BOTH, Item.NO_DIGIT, Optional.of("spans"));
    return new TestDefinition(
            id,
            "1.0",
            10,
            List.of(group),
            List.of(new Caution("gently", Source.commonPractice())),
            List.of(),
            List.of(twice),
            reads,
            new Labels(
                Map.of(
                    "en",
                    Map.of(
                        "test.title", "Spans",
                        "group.spans", "Hand span",
                        "item.span", "Span",
                        "caution.gently", "Gently.",
                        "result.twice", "Twice the span",
                        "twice.step", "2 x {0}",
                        "twice.missing", "no span"))))
        .withSettings(List.of(new Setting(id + ".factor", List.of("2", "3"), "2")));
  }

  @Override
  public List<Result> results(PatientContext context) {
    ArrayList<Result> results = new ArrayList<>();
    BigDecimal factor =
        new BigDecimal(context.evaluation().choices().getOrDefault(id + ".factor", "2"));
    for (Side side : EnumSet.of(Side.RIGHT, Side.LEFT)) {
      ItemKey key = key(side);
      Optional<Quantity> span = context.snapshot().quantity(key);
      Explanation why =
          new Explanation(
              List.of(Message.of(id, "twice.step", span.isPresent() ? span.get() : "?")),
              List.of(Source.commonPractice()),
              "twice",
              Optional.of("2*" + key.cellName()));
      results.add(
          span.map(
                  s ->
                      Result.computed(
                          twice(side),
                          new Quantity(s.amount().multiply(factor), Unit.MILLIMETRE),
                          why))
              .orElseGet(
                  () ->
                      Result.incomplete(
                          twice(side), Message.of(id, "twice.missing"), List.of(key), why)));
    }
    return results;
  }
}
