package styloid.checks.demo;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import styloid.model.Absence;
import styloid.model.Choice;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.EntryId;
import styloid.model.Evaluation;
import styloid.model.EvaluationId;
import styloid.model.EvaluationRecord;
import styloid.model.Item;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.Ledger;
import styloid.model.PatientId;
import styloid.model.Quantity;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.model.Text;
import styloid.model.TherapistId;
import styloid.model.Unit;
import styloid.model.Value;
import styloid.spi.EntryCheck;
import styloid.spi.TestDefinition;

/** Writes down one invented visit, entry by entry, as a therapist would have recorded it. */
final class Visit {
  private static final int SECONDS_AN_ENTRY = 7;

  private final Map<TestId, TestDefinition> tests;
  private final Evaluation head;
  private final Random chance;
  private final ArrayList<Entry> entries = new ArrayList<>();
  private Instant now;

  Visit(
      Map<TestId, TestDefinition> tests, PatientId patient, LocalDate day, TherapistId therapist) {
    this.tests = tests;
    this.now = day.atTime(9, 0).toInstant(ZoneOffset.UTC);
    EvaluationId id = new EvaluationId(named("evaluation " + patient + " " + day));
    this.chance = new Random(id.value().getMostSignificantBits());
    Map<TestId, String> versions = new HashMap<>();
    tests.forEach((test, definition) -> versions.put(test, definition.version()));
    this.head =
        new Evaluation(id, patient, day, therapist, Evaluation.State.DRAFT, versions, Map.of());
  }

  static UUID named(String what) {
    return UUID.nameUUIDFromBytes(("invented " + what).getBytes(StandardCharsets.UTF_8));
  }

  EvaluationRecord record() {
    return new EvaluationRecord(head, Ledger.of(entries), List.of(), Map.of());
  }

  /** A few more or less than {@code around}, by up to {@code spread}. */
  int about(int around, int spread) {
    return around + chance.nextInt(2 * spread + 1) - spread;
  }

  /** Whether this place has a value already. */
  boolean has(ItemKey key) {
    return entries.stream().anyMatch(e -> e.key().equals(key));
  }

  TestDefinition test(String id) {
    return tests.get(new TestId(id));
  }

  Visit put(String test, String item, Side side, Digit digit, int trial, Value value) {
    ItemKey key = new ItemKey(new TestId(test), new ItemId(item), side, digit, trial);
    Item declared =
        test(test)
            .item(key.item())
            .filter(i -> i.has(key))
            .orElseThrow(() -> new IllegalArgumentException("no test takes " + key));
    EntryCheck.Checked checked = EntryCheck.check(declared, value);
    if (checked.value().isEmpty()) {
      throw new IllegalArgumentException(key + " does not take " + value);
    }
    now = now.plusSeconds(SECONDS_AN_ENTRY);
    EntryId id = new EntryId(named(head.id() + " " + key + " " + now));
    entries.add(new Entry(id, key, Optional.of(value), now, head.therapist(), checked.asks()));
    return this;
  }

  Visit choice(String test, String item, Side side, String code) {
    return put(test, item, side, Digit.NONE, 1, new Choice(code));
  }

  Visit text(String test, String item, Side side, String words) {
    return put(test, item, side, Digit.NONE, 1, new Text(words));
  }

  Visit absent(String test, String item, Side side, Absence.Reason reason, String note) {
    return put(test, item, side, Digit.NONE, 1, new Absence(reason, note));
  }

  Visit degrees(String item, Side side, Digit digit, int degrees) {
    return put(
        "goniometry", item, side, digit, 1, Quantity.of(String.valueOf(degrees), Unit.DEGREE));
  }

  /** Three trials of a force, as read off the instrument. */
  Visit force(String measure, Side side, Unit unit, String... readings) {
    int trial = 1;
    for (String reading : readings) {
      put("grip", measure, side, Digit.NONE, trial++, Quantity.of(reading, unit));
    }
    return this;
  }
}
