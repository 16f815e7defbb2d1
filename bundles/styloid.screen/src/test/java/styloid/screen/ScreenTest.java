package styloid.screen;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import styloid.model.Absence;
import styloid.model.Choice;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.Item;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.ItemKind;
import styloid.model.Outcome;
import styloid.model.Precaution;
import styloid.model.Quantity;
import styloid.model.Region;
import styloid.model.Result;
import styloid.model.ResultId;
import styloid.model.ResultKey;
import styloid.model.Results;
import styloid.model.Side;
import styloid.model.Snapshot;
import styloid.model.Unit;
import styloid.model.Value;
import styloid.spi.Group;
import styloid.spi.TestDefinition;
import styloid.spi.TestModule;
import styloid.spi.Withheld;
import styloid.testkit.SampleEvaluations;
import styloid.testkit.TestModuleContract;

class ScreenTest extends TestModuleContract {
  private final SampleEvaluations samples = new SampleEvaluations(3);
  private final TestDefinition definition = new Screen().definition();

  @Override
  protected TestModule module() {
    return new Screen();
  }

  private Entry entry(String item, Side side, Value value) {
    return samples.entry(key(item, side), value);
  }

  private static ItemKey key(String item, Side side) {
    return new ItemKey(ScreenDefinition.ID, new ItemId(item), side, Digit.NONE, 1);
  }

  private Result result(String id, Side side, Snapshot snapshot) {
    Results all =
        Results.of(module().results(limited(samples.context(samples.patient(), snapshot))));
    return all.result(new ResultKey(ScreenDefinition.ID, new ResultId(id), side, Digit.NONE))
        .orElseThrow();
  }

  private static Optional<Value> count(int number) {
    return Optional.of(Quantity.of(Integer.toString(number), Unit.COUNT));
  }

  /** What the window does after asking once, written out here without it. */
  private Snapshot rest(Snapshot start) {
    Snapshot filled = start;
    String code = definition.restAs().orElseThrow();
    for (ItemKey key : definition.keys()) {
      Item item = definition.item(key.item()).orElseThrow();
      boolean offers = item.kind() instanceof ItemKind.Choices c && c.codes().contains(code);
      if (offers && filled.entry(key).isEmpty() && item.askWhen().holds(filled, key)) {
        filled = filled.with(samples.entry(key, new Choice(code)));
      }
    }
    return filled;
  }

  private List<ItemKey> open(Snapshot snapshot) {
    ArrayList<ItemKey> open = new ArrayList<>();
    for (ItemKey key : definition.keys()) {
      Item item = definition.item(key.item()).orElseThrow();
      if (!item.optional()
          && snapshot.entry(key).isEmpty()
          && item.askWhen().holds(snapshot, key)) {
        open.add(key);
      }
    }
    return open;
  }

  @Test
  void restAsFullLeavesNothingToAskOfTwoNormalArms() {
    Snapshot filled = rest(Snapshot.empty());
    assertEquals(List.of(), open(filled));
    assertEquals(2 * 39, filled.entries().size());
    for (Result result : module().results(limited(samples.context(samples.patient(), filled)))) {
      assertTrue(result.value().isPresent(), () -> result.key() + " is open");
    }
  }

  @Test
  void restAsFullKeepsWhatWasSeenBefore() {
    Snapshot seen =
        Snapshot.of(
            List.of(
                entry("wrist-flexion", Side.LEFT, new Choice("limited")),
                entry("elbow-flexion", Side.RIGHT, new Absence(Absence.Reason.PAIN))));
    Snapshot filled = rest(seen);
    assertEquals(Optional.of("limited"), filled.choice(key("wrist-flexion", Side.LEFT)));
    assertTrue(filled.absence(key("elbow-flexion", Side.RIGHT)).isPresent());
    assertEquals(List.of(key("wrist-flexion-pain", Side.LEFT)), open(filled));
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          # motion, pain, decision -> next; a dash is nothing recorded, x an absence
          full,    -,   -,    not-needed
          full,    no,  -,    not-needed
          full,    yes, -,    put-forward
          full,    x,   -,    open
          limited, -,   -,    put-forward
          limited, no,  -,    put-forward
          limited, yes, -,    put-forward
          unable,  no,  -,    put-forward
          -,       -,   -,    open
          x,       -,   -,    open
          -,       yes, -,    put-forward
          full,    -,   add,  added
          limited, yes, drop, dropped
          -,       -,   add,  added
          x,       -,   drop, dropped
          limited, no,  x,    open
          """)
  void limitedUnableOrPainfulIsPutForwardUnlessTheTherapistDecides(
      String motion, String pain, String decision, String expected) {
    ArrayList<Entry> entries = new ArrayList<>();
    record("wrist-extension", motion, entries);
    record("wrist-extension-pain", pain, entries);
    record("wrist-extension-decision", decision, entries);
    Result next = result("wrist-extension-next", Side.RIGHT, Snapshot.of(entries));
    Optional<Value> value =
        expected.equals("open") ? Optional.empty() : Optional.of(new Choice(expected));
    assertEquals(value, next.value());
    assertEquals(expected.equals("open"), next.outcome() instanceof Outcome.Incomplete);
  }

  private void record(String item, String code, List<Entry> entries) {
    if (!code.equals("-")) {
      Value value =
          code.equals("x") ? new Absence(Absence.Reason.NOT_DONE) : new Choice(code.strip());
      entries.add(entry(item, Side.RIGHT, value));
    }
  }

  @Test
  void countsOfAnAreaAreIncompleteUntilEachMotionIsSeen() {
    Snapshot some =
        Snapshot.of(
            List.of(
                entry("elbow-flexion", Side.LEFT, new Choice("limited")),
                entry("elbow-flexion-pain", Side.LEFT, new Choice("yes"))));
    Result counted = result("elbow-not-full", Side.LEFT, some);
    assertEquals(
        List.of(key("elbow-extension", Side.LEFT)),
        ((Outcome.Incomplete) counted.outcome()).missing());
    Snapshot all = some.with(entry("elbow-extension", Side.LEFT, new Choice("full")));
    assertEquals(count(1), result("elbow-not-full", Side.LEFT, all).value());
    assertEquals(count(1), result("elbow-painful", Side.LEFT, all).value());
    assertTrue(result("elbow-not-full", Side.RIGHT, all).value().isEmpty());
  }

  @Test
  void painIsAskedOnlyWhereMotionFallsShortAndItsSiteOnlyWhereItHurts() {
    ItemKey pain = key("thumb-adduction-pain", Side.RIGHT);
    ItemKey site = key("thumb-adduction-pain-site", Side.RIGHT);
    Snapshot full = Snapshot.of(List.of(entry("thumb-adduction", Side.RIGHT, new Choice("full"))));
    assertTrue(open(full).stream().noneMatch(k -> k.equals(pain) || k.equals(site)));
    Snapshot limited = full.with(entry("thumb-adduction", Side.RIGHT, new Choice("limited")));
    assertTrue(open(limited).contains(pain));
    Snapshot hurts = limited.with(entry("thumb-adduction-pain", Side.RIGHT, new Choice("yes")));
    assertTrue(open(hurts).contains(site));
  }

  /** The list of the trade: every motion, action and reach a screen of the arm looks at. */
  @Test
  void everyMotionActionAndReachIsThere() {
    Set<String> motions = new HashSet<>();
    Area.all().forEach(area -> motions.addAll(area.motions()));
    assertTrue(
        motions.containsAll(
            List.of(
                "full-fist",
                "hook-fist",
                "straight-fist",
                "thumb-opposition",
                "reach-mouth",
                "reach-opposite-shoulder",
                "reach-behind-head",
                "reach-behind-back")));
    assertEquals(39, motions.size());
    List<Region> order = definition.groups().stream().map(Group::region).toList();
    assertEquals(order.stream().sorted().toList(), order);
  }

  @Test
  void aLimitOnActiveMotionOfTheFingersWithholdsFistsButNotTheWrist() {
    Precaution limit =
        new Precaution(
            Precaution.Kind.NO_ACTIVE_MOTION,
            Region.FINGERS,
            Side.LEFT,
            Digit.NONE,
            Optional.empty(),
            Optional.empty(),
            "surgeon",
            "");
    assertTrue(withheld("full-fist", Side.LEFT, limit));
    assertTrue(withheld("mp-flexion", Side.LEFT, limit));
    assertTrue(withheld("thumb-opposition", Side.LEFT, limit));
    assertEquals(false, withheld("full-fist", Side.RIGHT, limit));
    assertEquals(false, withheld("wrist-flexion", Side.LEFT, limit));
    assertEquals(false, withheld("full-fist-pain", Side.LEFT, limit));
  }

  private boolean withheld(String item, Side side, Precaution limit) {
    ItemKey key = key(item, side);
    return !Withheld.by(
            definition.groupOf(key.item()).orElseThrow(),
            definition.item(key.item()).orElseThrow(),
            key,
            List.of(limit),
            samples.context(samples.patient(), Snapshot.empty()).evaluation().date())
        .isEmpty();
  }
}
