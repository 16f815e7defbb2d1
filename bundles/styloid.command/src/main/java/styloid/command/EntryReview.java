package styloid.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import styloid.exchange.DefinitionFile;
import styloid.model.DefinitionText;
import styloid.model.Entry;
import styloid.model.EvaluationRecord;
import styloid.model.FileProblem;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.ItemKind;
import styloid.model.Message;
import styloid.model.PatientRecord;
import styloid.model.Snapshot;
import styloid.model.TestId;
import styloid.model.Value;
import styloid.spi.EntryCheck;
import styloid.spi.MixedUnits;
import styloid.spi.TestDefinition;
import styloid.spi.Texts;

/**
 * Judges the values of a record by the tests as they were defined when it was made; where the file
 * holds no definition of a test, by the modules at hand.
 */
final class EntryReview {
  private final Surroundings surroundings;

  /** What was found: what must be put right, and what is only unusual. */
  record Found(List<FileProblem> problems, List<FileProblem> notes) {}

  EntryReview(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  /** Reviews a record read from {@code file}, which is read again for line numbers if need be. */
  Found of(Path file, PatientRecord record) throws IOException {
    Map<String, String> refused = new HashMap<>();
    Map<String, String> unusual = new HashMap<>();
    for (int i = 0; i < record.evaluations().size(); i++) {
      evaluation(record.evaluations().get(i), "$.evaluations[" + i + "]", refused, unusual);
    }
    return refused.isEmpty() && unusual.isEmpty()
        ? new Found(List.of(), List.of())
        : new Found(JsonPlaces.place(file, refused), JsonPlaces.place(file, unusual));
  }

  private void evaluation(
      EvaluationRecord record,
      String path,
      Map<String, String> refused,
      Map<String, String> unusual) {
    Map<TestId, TestDefinition> definitions = new HashMap<>();
    surroundings.session().tests().forEach(test -> definitions.put(test.id(), test));
    for (DefinitionText text : record.definitions()) {
      DefinitionFile.Read read = DefinitionFile.read(text);
      read.definition().ifPresent(definition -> definitions.put(text.test(), definition));
      if (read.definition().isEmpty()) {
        refused.put(path, text(words("bad-definition", text.test().value(), read.problems())));
      }
    }
    Texts texts = surroundings.texts();
    Set<TestId> unknown = new HashSet<>();
    List<Entry> entries = record.ledger().entries();
    for (int i = 0; i < entries.size(); i++) {
      Entry entry = entries.get(i);
      TestDefinition test = definitions.get(entry.key().test());
      String place = path + ".entries[" + i + "]";
      if (test == null) {
        if (unknown.add(entry.key().test())) {
          unusual.put(place, text(words("no-module", entry.key().test().value())));
        }
      } else if (!test.has(entry.key())) {
        refused.put(place, text(words("no-such-item", entry.key().toString(), test.version())));
      } else {
        entry.value().ifPresent(v -> value(entry, v, test, place, refused, unusual, texts));
        if (!entry.confirmed()) {
          List<Entry> before = entries.subList(0, i);
          mixed(test, entry, before)
              .map(texts::text)
              .ifPresent(
                  said ->
                      unusual.merge(place, entry.key() + ": " + said, (a, b) -> a + " " + said));
        }
      }
    }
  }

  private static Optional<Message> mixed(TestDefinition test, Entry entry, List<Entry> before) {
    Item item = test.item(entry.key().item()).orElseThrow();
    boolean several = item.kind() instanceof ItemKind.Number number && number.units().size() > 1;
    return several
        ? entry
            .value()
            .flatMap(v -> MixedUnits.question(item, entry.key(), v, Snapshot.of(before).entries()))
        : Optional.empty();
  }

  private static void value(
      Entry entry,
      Value value,
      TestDefinition test,
      String place,
      Map<String, String> refused,
      Map<String, String> unusual,
      Texts texts) {
    ItemKey key = entry.key();
    EntryCheck.Checked checked = EntryCheck.check(test.item(key.item()).orElseThrow(), value);
    Optional<String> said =
        checked.problem().map(problem -> key + ": " + texts.text(problem.text()));
    if (checked.value().isEmpty()) {
      refused.put(place, said.orElse(key.toString()));
    } else if (checked.asks() && !entry.confirmed()) {
      unusual.put(place, said.orElse(key.toString()));
    }
  }

  private static Message words(String key, Object... args) {
    ArrayList<Object> plain = new ArrayList<>();
    for (Object arg : args) {
      plain.add(String.valueOf(arg));
    }
    return new Message(Surroundings.SCOPE, key, plain);
  }

  private String text(Message message) {
    return surroundings.texts().text(message);
  }
}
