package styloid.exchange;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import styloid.exchange.json.Decoder;
import styloid.exchange.json.Decoders;
import styloid.exchange.json.Excerpt;
import styloid.exchange.json.Fields;
import styloid.exchange.json.Node;
import styloid.exchange.json.Problems;
import styloid.model.DefinitionText;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.EntryId;
import styloid.model.Evaluation;
import styloid.model.EvaluationId;
import styloid.model.EvaluationRecord;
import styloid.model.ItemKey;
import styloid.model.Ledger;
import styloid.model.Patient;
import styloid.model.PatientId;
import styloid.model.PatientRecord;
import styloid.model.Precaution;
import styloid.model.Region;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.model.TherapistId;

/** Reads the values of an evaluation file; used for one file and thrown away. */
final class EvaluationReader {
  static final int FORMAT = 1;

  private final Map<String, DefinitionText> definitions = new TreeMap<>();
  private final Set<EvaluationId> evaluations = new HashSet<>();
  private final Set<EntryId> entries = new HashSet<>();
  private PatientId owner;

  PatientRecord record(Fields f) {
    if (!format(f)) {
      return null;
    }
    Patient patient = f.need("patient", Fields.object(this::patient));
    List<Precaution> precautions =
        f.list("precautions", Fields.object(EvaluationReader::precaution));
    f.list("definitions", Fields.object(this::definition));
    List<EvaluationRecord> records = f.list("evaluations", Fields.object(this::evaluation));
    return f.make(() -> new PatientRecord(patient, precautions, records));
  }

  /** Whether the file says it has the format read here; nothing else is judged when it has not. */
  static boolean format(Fields f) {
    Integer format = f.need("format", Decoders::whole);
    if (format != null && format != FORMAT) {
      f.problem(
          "format",
          "format " + format + " is not known here (only " + FORMAT + "); use a newer version");
    }
    return f.sound();
  }

  private Patient patient(Fields f) {
    PatientId id = f.need("id", (n, p) -> made(Decoders.uuid(n, p), PatientId::new));
    owner = id;
    String recordNumber = f.need("recordNumber", Decoders::text);
    String name = f.need("name", Decoders::text);
    var birthDate = f.may("birthDate", Decoders::date);
    var sex = f.may("sex", Decoders.code("sex", Patient.Sex.class));
    var dominance = f.may("dominance", Decoders.code("dominance", Patient.Dominance.class));
    List<Side> involved = f.list("involved", Decoders.code("side", Side.class));
    String diagnosis = f.may("diagnosis", Decoders::text).orElse("");
    var onset = f.may("onset", Decoders::date);
    var surgery = f.may("surgery", Decoders::date);
    var height = f.may("heightCm", Decoders::decimal);
    return f.make(
        () ->
            new Patient(
                id,
                recordNumber,
                name,
                birthDate,
                sex,
                dominance,
                involved.isEmpty() ? Set.of() : EnumSet.copyOf(involved),
                diagnosis,
                onset,
                surgery,
                height));
  }

  static Precaution precaution(Fields f) {
    Precaution.Kind kind = f.need("kind", Decoders.code("precaution", Precaution.Kind.class));
    Region region = f.need("region", Decoders.code("region", Region.class));
    Side side = f.need("side", Decoders.code("side", Side.class));
    Digit digit = f.may("digit", Decoders.code("digit", Digit.class)).orElse(Digit.NONE);
    Optional<LocalDate> from = f.may("from", Decoders::date);
    Optional<LocalDate> until = f.may("until", Decoders::date);
    String setBy = f.may("setBy", Decoders::text).orElse("");
    String note = f.may("note", Decoders::text).orElse("");
    return f.make(() -> new Precaution(kind, region, side, digit, from, until, setBy, note));
  }

  private DefinitionText definition(Fields f) {
    String name = f.need("name", Decoders::text);
    TestId test = f.need("test", Decoders.of(TestId::new));
    String version = f.need("version", Decoders::text);
    String text = f.need("text", Decoders::text);
    DefinitionText definition = f.make(() -> new DefinitionText(test, version, text));
    if (definition != null && definitions.putIfAbsent(name, definition) != null) {
      f.problem("name", "definition \"" + Excerpt.of(name) + "\" stands twice");
    }
    return definition;
  }

  private EvaluationRecord evaluation(Fields f) {
    EvaluationId id = f.need("id", (n, p) -> made(Decoders.uuid(n, p), EvaluationId::new));
    if (id != null && !evaluations.add(id)) {
      f.problem("id", "evaluation " + id + " stands twice");
    }
    LocalDate date = f.need("date", Decoders::date);
    TherapistId therapist = f.need("therapist", Decoders.of(TherapistId::new));
    Evaluation.State state = f.need("state", Decoders.code("state", Evaluation.State.class));
    Map<TestId, String> versions =
        f.may("versions", Decoders.map(TestId::new, Decoders::text)).orElseGet(HashMap::new);
    Map<String, String> choices =
        f.may("choices", Decoders.map(key -> key, Decoders::text)).orElseGet(HashMap::new);
    List<DefinitionText> used = f.list("definitions", this::definitionUsed);
    EntryReader reader = new EntryReader(id, therapist);
    List<Entry> ledger = f.list("entries", once(Fields.object(reader::entry)));
    Map<ItemKey, String> drafts = drafts(f);
    if (owner == null) {
      return null;
    }
    return f.make(
        () ->
            new EvaluationRecord(
                new Evaluation(id, owner, date, therapist, state, versions, choices),
                Ledger.of(ledger),
                used,
                drafts));
  }

  private DefinitionText definitionUsed(Node node, Problems problems) {
    String name = Decoders.text(node, problems);
    if (name == null) {
      return null;
    }
    DefinitionText found = definitions.get(name);
    if (found == null) {
      problems.add(
          node.where(), "no definition \"" + Excerpt.of(name) + "\" stands in $.definitions");
    }
    return found;
  }

  private Decoder<Entry> once(Decoder<Entry> decoder) {
    return (node, problems) -> {
      Entry entry = decoder.decode(node, problems);
      if (entry != null && !entries.add(entry.id())) {
        problems.add(
            node.where(),
            "an entry with this id stands already; where no \"id\" is given, item, side, digit,"
                + " trial and time must differ");
      }
      return entry;
    };
  }

  private static Map<ItemKey, String> drafts(Fields f) {
    LinkedHashMap<ItemKey, String> drafts = new LinkedHashMap<>();
    f.list(
        "drafts",
        (node, problems) -> {
          var draft = Fields.object(EntryReader::draft).decode(node, problems);
          if (draft != null && drafts.put(draft.getKey(), draft.getValue()) != null) {
            problems.add(node.where(), "a draft of " + draft.getKey() + " stands already");
          }
          return draft;
        });
    return drafts;
  }

  private static <A, B> B made(A part, Function<A, B> type) {
    return part == null ? null : type.apply(part);
  }
}
