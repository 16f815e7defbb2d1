package styloid.exchange;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import styloid.exchange.json.Decoders;
import styloid.exchange.json.Excerpt;
import styloid.exchange.json.Fields;
import styloid.exchange.json.Node;
import styloid.exchange.json.Problems;
import styloid.model.Absence;
import styloid.model.Choice;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.EntryId;
import styloid.model.EvaluationId;
import styloid.model.InSpite;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.Precaution;
import styloid.model.Quantity;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.model.Text;
import styloid.model.TherapistId;
import styloid.model.Value;

/** Reads the entries and drafts of one evaluation. */
final class EntryReader {
  private final EvaluationId evaluation;
  private final TherapistId therapist;

  /**
   * @param therapist who entered what names nobody; may be null when the head of the evaluation
   *     could not be read
   */
  EntryReader(EvaluationId evaluation, TherapistId therapist) {
    this.evaluation = evaluation;
    this.therapist = therapist;
  }

  Entry entry(Fields f) {
    ItemKey key = key(f);
    Optional<UUID> id = f.may("id", Decoders::uuid);
    Optional<Value> value = f.need("value", EntryReader::value);
    Instant at = f.need("at", Decoders::instant);
    TherapistId by = f.may("by", Decoders.of(TherapistId::new)).orElse(therapist);
    boolean confirmed = f.may("confirmed", Decoders::truth).orElse(false);
    Optional<String> reason = f.may("override", Decoders::text);
    List<Precaution> overrode = f.list("overrode", Fields.object(EvaluationReader::precaution));
    if (f.has("overrode") && !f.has("override")) {
      f.problem("overrode", "\"override\" is missing: why was it done all the same?");
    }
    if (by == null) {
      return null;
    }
    return f.make(
        () ->
            new Entry(
                new EntryId(id.orElseGet(() -> madeId(key, at))),
                key,
                value,
                at,
                by,
                confirmed,
                reason.map(why -> new InSpite(why, overrode))));
  }

  /** The same place and time in the same evaluation always give the same id. */
  private UUID madeId(ItemKey key, Instant at) {
    String place = evaluation + "/" + key + "/" + at;
    return UUID.nameUUIDFromBytes(place.getBytes(StandardCharsets.UTF_8));
  }

  static Map.Entry<ItemKey, String> draft(Fields f) {
    ItemKey key = key(f);
    String text = f.need("text", Decoders::text);
    return f.make(() -> Map.entry(key, text));
  }

  private static ItemKey key(Fields f) {
    String[] item = f.need("item", EntryReader::item);
    Side side = f.need("side", Decoders.code("side", Side.class));
    Digit digit = f.may("digit", Decoders.code("digit", Digit.class)).orElse(Digit.NONE);
    int trial = f.may("trial", EntryReader::trial).orElse(1);
    return f.sound()
        ? new ItemKey(new TestId(item[0]), new ItemId(item[1]), side, digit, trial)
        : null;
  }

  private static String[] item(Node node, Problems problems) {
    String text = Decoders.text(node, problems);
    if (text == null) {
      return null;
    }
    String[] parts = text.split("/", -1);
    if (parts.length != 2) {
      problems.add(
          node.where(), "\"" + Excerpt.of(text) + "\" must be test/item, such as \"grip/power\"");
      return null;
    }
    return Decoders.judged(
        node,
        problems,
        () -> new String[] {new TestId(parts[0]).value(), new ItemId(parts[1]).value()});
  }

  private static Integer trial(Node node, Problems problems) {
    Integer trial = Decoders.whole(node, problems);
    if (trial != null && (trial < 1 || trial > 99)) {
      problems.add(node.where(), "a trial is 1 to 99, not " + trial);
      return null;
    }
    return trial;
  }

  private static Optional<Value> value(Node node, Problems problems) {
    if (node instanceof Node.Null) {
      return Optional.empty();
    }
    if (!(node instanceof Node.Obj)) {
      return Decoders.wrong(
          node, "an object such as {\"amount\": \"38.5\", \"unit\": \"kgf\"}, or null", problems);
    }
    return Optional.ofNullable(Fields.object(EntryReader::value).decode(node, problems));
  }

  private static Value value(Fields f) {
    String kind = f.oneOf("amount", "choice", "text", "absent");
    if (kind == null) {
      f.may("unit", Decoders::unit);
      f.may("note", Decoders::text);
      return f.make(() -> null);
    }
    return switch (kind) {
      case "amount" -> {
        var amount = f.need("amount", Decoders::decimal);
        var unit = f.need("unit", Decoders::unit);
        yield f.make(() -> new Quantity(amount, unit));
      }
      case "choice" -> one(f, f.need("choice", Decoders.of(Choice::new)));
      case "text" -> one(f, f.need("text", Decoders.of(Text::new)));
      default -> {
        var reason = f.need("absent", Decoders.code("reason", Absence.Reason.class));
        String note = f.may("note", Decoders::text).orElse("");
        yield f.make(() -> new Absence(reason, note));
      }
    };
  }

  private static Value one(Fields f, Value value) {
    return f.make(() -> value);
  }
}
