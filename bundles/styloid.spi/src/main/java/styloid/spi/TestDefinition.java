package styloid.spi;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import styloid.model.Caution;
import styloid.model.Condition;
import styloid.model.Item;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.ItemKind;
import styloid.model.ItemRef;
import styloid.model.ResultKey;
import styloid.model.TestId;
import styloid.model.Unit;

/**
 * A test as data.
 *
 * @param version changes whenever an item, unit, norm or rule changes meaning
 * @param order place among the tests, lowest first; the built-in ones use 10, 20, 30, 40
 * @param cautions every caution the test can show
 * @param testCautions ids of those that hold for the whole test
 * @param results every result it can give
 * @param reads other tests whose entries or results it looks at
 * @param restAs the answer with which everything not yet recorded may be filled after asking once:
 *     each asked choice item that has this answer and is not withheld gets an entry of its own
 * @param timers holds and rests of its items; an item has at most one of a kind
 * @param settings the clinic's choices its results and conditions go by
 */
public record TestDefinition(
    TestId id,
    String version,
    int order,
    List<Group> groups,
    List<Caution> cautions,
    List<String> testCautions,
    List<ResultDefinition> results,
    Set<TestId> reads,
    Labels labels,
    Optional<String> restAs,
    List<Timer> timers,
    List<Setting> settings) {

  /** A test without timers and settings. */
  public TestDefinition(
      TestId id,
      String version,
      int order,
      List<Group> groups,
      List<Caution> cautions,
      List<String> testCautions,
      List<ResultDefinition> results,
      Set<TestId> reads,
      Labels labels,
      Optional<String> restAs) {
    this(
        id,
        version,
        order,
        groups,
        cautions,
        testCautions,
        results,
        reads,
        labels,
        restAs,
        List.of(),
        List.of());
  }

  /** A test without an answer for the rest. */
  public TestDefinition(
      TestId id,
      String version,
      int order,
      List<Group> groups,
      List<Caution> cautions,
      List<String> testCautions,
      List<ResultDefinition> results,
      Set<TestId> reads,
      Labels labels) {
    this(
        id,
        version,
        order,
        groups,
        cautions,
        testCautions,
        results,
        reads,
        labels,
        Optional.empty());
  }

  public TestDefinition {
    Objects.requireNonNull(id, "id");
    groups = Groups.of(id, groups);
    cautions = List.copyOf(cautions);
    testCautions = List.copyOf(testCautions);
    results = Declared.of(results);
    reads = Set.copyOf(reads);
    Objects.requireNonNull(labels, "labels");
    Objects.requireNonNull(restAs, "restAs");
    timers = List.copyOf(timers);
    settings = List.copyOf(settings);
    if (version == null || !version.matches("[0-9]+(\\.[0-9]+){0,2}")) {
      throw new IllegalArgumentException(id + ": not a version: " + version);
    }
    checkIds(id, groups, cautions, testCautions, results);
    checkTimers(id, groups, timers);
    checkSettings(id, settings);
    checkChosen(id, groups, settings);
  }

  private static void checkTimers(TestId id, List<Group> groups, List<Timer> timers) {
    HashMap<ItemId, ItemKind> kinds = new HashMap<>();
    groups.forEach(group -> group.items().forEach(item -> kinds.put(item.id(), item.kind())));
    HashSet<Object> timed = new HashSet<>();
    for (Timer timer : timers) {
      for (ItemId item : timer.items()) {
        once(timed.add(List.of(timer.kind(), item)), id, timer.kind().code() + " of " + item);
        boolean fits =
            kinds.containsKey(item)
                && timer.letGo().map(l -> answers(kinds.get(item), l)).orElse(true);
        if (!fits) {
          throw new IllegalArgumentException(id + ": the timer does not fit item " + item);
        }
      }
      timer.letGo().flatMap(Timer.LetGo::time).ifPresent(t -> seconds(id, t, kinds.get(t)));
    }
  }

  private static boolean answers(ItemKind kind, Timer.LetGo letGo) {
    return kind instanceof ItemKind.Choices choices
        && choices.codes().containsAll(List.of(letGo.atOnce(), letGo.during()));
  }

  private static void seconds(TestId id, ItemId item, ItemKind kind) {
    if (!(kind instanceof ItemKind.Number number) || !number.units().contains(Unit.SECOND)) {
      throw new IllegalArgumentException(id + ": " + item + " takes no seconds");
    }
  }

  private static void checkSettings(TestId id, List<Setting> settings) {
    HashSet<String> keys = new HashSet<>();
    for (Setting setting : settings) {
      once(keys.add(setting.key()), id, "setting " + setting.key());
      if (!setting.key().startsWith(id + ".")) {
        throw new IllegalArgumentException(id + ": a setting of another test " + setting.key());
      }
    }
  }

  /** A condition that names a setting names one of this test, as that setting is. */
  private static void checkChosen(TestId id, List<Group> groups, List<Setting> settings) {
    for (Group group : groups) {
      for (Item item : group.items()) {
        for (Condition.Chosen chosen : item.askWhen().choices()) {
          if (settings.stream().noneMatch(setting -> setting.fits(chosen))) {
            throw new IllegalArgumentException(
                id + ": condition of " + item.id() + " on unknown setting or code " + chosen);
          }
        }
      }
    }
  }

  private static void checkIds(
      TestId id,
      List<Group> groups,
      List<Caution> cautions,
      List<String> testCautions,
      List<ResultDefinition> results) {
    HashSet<String> groupIds = new HashSet<>();
    HashSet<ItemId> items = new HashSet<>();
    HashSet<String> cautionIds = new HashSet<>();
    cautions.forEach(c -> once(cautionIds.add(c.id()), id, "caution " + c.id()));
    for (Group group : groups) {
      once(groupIds.add(group.id()), id, "group " + group.id());
      group.items().forEach(item -> once(items.add(item.id()), id, "item " + item.id()));
      known(cautionIds, group.cautions(), id);
    }
    known(cautionIds, testCautions, id);
    for (Group group : groups) {
      for (Item item : group.items()) {
        for (ItemId read : item.askWhen().reads()) {
          if (!items.contains(read)) {
            throw new IllegalArgumentException(id + ": condition on unknown item " + read);
          }
        }
      }
    }
    HashSet<Object> resultIds = new HashSet<>();
    for (ResultDefinition result : results) {
      once(resultIds.add(result.id()), id, "result " + result.id());
      result.group().ifPresent(g -> known(groupIds, List.of(g), id));
    }
  }

  private static void once(boolean first, TestId id, String what) {
    if (!first) {
      throw new IllegalArgumentException(id + ": " + what + " stands twice");
    }
  }

  private static void known(Set<String> known, List<String> used, TestId id) {
    for (String one : used) {
      if (!known.contains(one)) {
        throw new IllegalArgumentException(id + ": nothing is called " + one);
      }
    }
  }

  /** The same test with these timers. */
  public TestDefinition withTimers(List<Timer> other) {
    return with(other, settings);
  }

  /**
   * The same test with these settings. A test whose items are asked by a setting has that setting
   * from the start.
   */
  public TestDefinition withSettings(List<Setting> other) {
    return with(timers, other);
  }

  private TestDefinition with(List<Timer> newTimers, List<Setting> newSettings) {
    return new TestDefinition(
        id,
        version,
        order,
        groups,
        cautions,
        testCautions,
        results,
        reads,
        labels,
        restAs,
        newTimers,
        newSettings);
  }

  /** The timer of a kind that belongs to an item. */
  public Optional<Timer> timer(Timer.Kind kind, ItemId which) {
    return timers.stream()
        .filter(timer -> timer.kind() == kind && timer.items().contains(which))
        .findFirst();
  }

  /** The setting of that key. */
  public Optional<Setting> setting(String key) {
    return settings.stream().filter(setting -> setting.key().equals(key)).findFirst();
  }

  public List<Item> items() {
    return Groups.of(id, groups).items();
  }

  /** The items that take numbers or listed answers, and so never free text. */
  public Set<ItemId> itemsWithoutText() {
    LinkedHashSet<ItemId> ids = new LinkedHashSet<>();
    for (Item item : items()) {
      if (!(item.kind() instanceof ItemKind.Words)) {
        ids.add(item.id());
      }
    }
    return ids;
  }

  public Optional<Item> item(ItemId which) {
    return Groups.of(id, groups).item(which);
  }

  public Optional<Group> groupOf(ItemId which) {
    return Groups.of(id, groups).groupOf(which);
  }

  public Optional<Caution> caution(String which) {
    return cautions.stream().filter(c -> c.id().equals(which)).findFirst();
  }

  public Optional<ResultDefinition> result(ResultKey key) {
    return Declared.of(results).result(key.result());
  }

  /** Whether the key names an item, side, digit and trial of this test. */
  public boolean has(ItemKey key) {
    return key.test().equals(id) && item(key.item()).filter(i -> i.has(key)).isPresent();
  }

  /** The items of this test, in no order. */
  public Set<ItemRef> refs() {
    return Groups.of(id, groups).refs();
  }

  /** Every key of every item, in the order of the definition. */
  public List<ItemKey> keys() {
    ArrayList<ItemKey> keys = new ArrayList<>();
    items().forEach(item -> keys.addAll(item.keys(id)));
    return keys;
  }
}
