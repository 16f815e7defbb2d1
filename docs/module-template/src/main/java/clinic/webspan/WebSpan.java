package clinic.webspan;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.osgi.service.component.annotations.Component;
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
import styloid.spi.TestDefinition;
import styloid.spi.TestModule;

/** Thumb-web span on both sides, and the deficit against the other side. */
@Component(service = TestModule.class)
public final class WebSpan implements TestModule {
  private static final TestId ID = new TestId("clinic-web-span");
  private static final ItemId SPAN = new ItemId("span");
  private static final ResultId DEFICIT = new ResultId("deficit");

  private final TestDefinition definition =
      new TestDefinition(
          ID,
          "1.0", // changes when an item, unit, norm or rule changes meaning
          400, // place among the tests
          List.of(
              new Group(
                  "span",
                  Region.THUMB,
                  Set.of(Region.THUMB), // precautions on these regions withhold it
                  List.of(
                      Item.bothSides(
                          "span",
                          // refused outside 0..250 mm, asked about outside 20..180, both included
                          ItemKind.Number.of(Unit.MILLIMETRE, 0, 20, 180, 250, 0),
                          Demand.ACTIVE_MOTION)),
                  Group.Walk.ALTERNATING,
                  Group.Layout.LEFT_RIGHT_TABLE,
                  List.of("no-forcing"),
                  Guide.none())),
          List.of(new Caution("no-forcing", Source.commonPractice())),
          List.of(),
          List.of(
              new ResultDefinition(
                  DEFICIT,
                  Optional.of(Unit.MILLIMETRE),
                  0,
                  Item.BOTH,
                  Item.NO_DIGIT,
                  Optional.of("span"))),
          Set.of(), // other tests it reads
          Labels.beside(WebSpan.class));

  @Override
  public TestDefinition definition() {
    return definition;
  }

  @Override
  public List<Result> results(PatientContext context) {
    return Stream.of(Side.RIGHT, Side.LEFT).map(side -> deficit(context, side)).toList();
  }

  private static Result deficit(PatientContext context, Side side) {
    ItemKey here = new ItemKey(ID, SPAN, side, Digit.NONE, 1);
    ItemKey there = here.opposite();
    ResultKey key = new ResultKey(ID, DEFICIT, side, Digit.NONE);
    Optional<Quantity> span = context.snapshot().quantity(here);
    Optional<Quantity> other = context.snapshot().quantity(there);
    Explanation why =
        new Explanation(
            List.of(Message.of(ID, "deficit.step")),
            List.of(Source.commonPractice()),
            "clinic-web-span-deficit",
            Optional.of(there.cellName() + "-" + here.cellName()));
    if (span.isEmpty() || other.isEmpty()) {
      List<ItemKey> missing =
          Stream.of(here, there).filter(k -> context.snapshot().quantity(k).isEmpty()).toList();
      return Result.incomplete(key, Message.of(ID, "deficit.missing"), missing, why);
    }
    BigDecimal value = other.get().amount().subtract(span.get().amount());
    return Result.computed(key, new Quantity(value, Unit.MILLIMETRE), why);
  }
}
