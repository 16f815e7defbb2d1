package styloid.testkit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import styloid.model.Caution;
import styloid.model.Choice;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.ItemKind;
import styloid.model.Message;
import styloid.model.Outcome;
import styloid.model.Patient;
import styloid.model.PatientContext;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.ResultKey;
import styloid.model.Results;
import styloid.model.Side;
import styloid.model.Snapshot;
import styloid.model.TestId;
import styloid.spi.Group;
import styloid.spi.Guide;
import styloid.spi.ResultDefinition;
import styloid.spi.Setting;
import styloid.spi.Sheet;
import styloid.spi.TestDefinition;
import styloid.spi.TestModule;
import styloid.spi.Texts;

/** What every module must keep to. A module's test extends this class and gets all of it. */
public abstract class TestModuleContract {
  private static final int RANDOM_SNAPSHOTS = 1000;
  private static final Pattern ARGUMENT = Pattern.compile("\\{\\d+}");
  private static final Pattern CELL_NAME = Pattern.compile("[a-z][a-z0-9_]*__[a-z0-9_]+");

  /** A fresh module. */
  protected abstract TestModule module();

  /**
   * Ids of results that rest on whatever was recorded, so that an absence may change them, such as
   * counts of what was found.
   */
  protected Set<String> restOnWhatIsThere() {
    return Set.of();
  }

  /** Ids of results that are not mirrored when the sides are, such as norms by hand. */
  protected Set<String> dependOnHand() {
    return Set.of();
  }

  /** Context as the session hands it over: limited to what the module declared. */
  protected final PatientContext limited(PatientContext context) {
    TestDefinition definition = module().definition();
    return context.withSnapshot(
        context.snapshot().limitedTo(definition.refs(), definition.reads()));
  }

  private List<Result> results(Patient patient, Snapshot snapshot) {
    return module().results(limited(new SampleEvaluations(1).context(patient, snapshot)));
  }

  @Test
  void definitionIsTheSameAtEveryCall() {
    assertEquals(module().definition(), module().definition());
  }

  @Test
  void everythingShownHasWordsInEveryLanguage() {
    TestDefinition definition = module().definition();
    ArrayList<String> missing = new ArrayList<>();
    for (String language : definition.labels().languages()) {
      Texts texts = texts(definition, Locale.forLanguageTag(language));
      for (String key : keysToShow(definition)) {
        if (texts.find(definition.id().value(), key).filter(w -> !w.isBlank()).isEmpty()) {
          missing.add(language + ": " + key);
        }
      }
    }
    assertEquals(List.of(), missing);
  }

  @Test
  void everyLanguageHasTheSameKeys() {
    Map<String, Map<String, String>> all = module().definition().labels().byLanguage();
    all.forEach((language, words) -> assertEquals(all.get("en").keySet(), words.keySet()));
  }

  private static List<String> keysToShow(TestDefinition definition) {
    ArrayList<String> keys = new ArrayList<>(List.of("test.title"));
    for (Group group : definition.groups()) {
      keys.add("group." + group.id());
      group.guide().lines().stream().map(Guide.Line::labelKey).forEach(keys::add);
      for (Item item : group.items()) {
        keys.add("item." + item.id());
        if (item.kind() instanceof ItemKind.Choices choices) {
          choices.codes().forEach(code -> keys.add("choice." + item.id() + "." + code));
        }
      }
    }
    definition.cautions().stream().map(Caution::id).forEach(id -> keys.add("caution." + id));
    definition.results().forEach(result -> keys.add("result." + result.id()));
    for (Setting setting : definition.settings()) {
      keys.add(setting.labelKey());
      setting.codes().forEach(code -> keys.add(setting.labelKey(code)));
    }
    return keys;
  }

  private static Texts texts(TestDefinition definition, Locale locale) {
    return new Texts(Map.of(definition.id().value(), definition.labels()), locale);
  }

  @Test
  void everyCautionIsShownSomewhere() {
    TestDefinition definition = module().definition();
    HashSet<String> shown = new HashSet<>(definition.testCautions());
    definition.groups().forEach(group -> shown.addAll(group.cautions()));
    definition.cautions().forEach(c -> assertTrue(shown.contains(c.id()), c.id()));
  }

  @Test
  void resultsNeverThrowAndAreWellFormed() {
    TestDefinition definition = module().definition();
    SampleEvaluations samples = new SampleEvaluations(20260302);
    check(results(samples.patient(), Snapshot.empty()));
    check(results(samples.patient(), samples.absent(definition)));
    check(results(samples.patient(), samples.full(definition)));
    for (int i = 0; i < RANDOM_SNAPSHOTS; i++) {
      check(results(samples.patient(), samples.snapshot(definition, (i % 10 + 1) / 10.0)));
    }
  }

  private void check(List<Result> results) {
    TestDefinition definition = module().definition();
    Texts texts = texts(definition, Locale.ENGLISH);
    HashSet<String> cells = new HashSet<>();
    definition.keys().forEach(key -> cells.add(key.cellName()));
    definition.results().forEach(result -> cells.addAll(cellNames(definition.id(), result)));
    Results.of(results);
    for (Result result : results) {
      ResultKey key = result.key();
      assertEquals(definition.id(), key.test(), "test of " + key);
      Optional<ResultDefinition> declared = definition.result(key);
      assertTrue(declared.isPresent(), "not declared: " + key);
      assertTrue(declared.get().sides().contains(key.side()), "side of " + key);
      assertTrue(declared.get().digits().contains(key.digit()), "digit of " + key);
      result.quantity().ifPresent(q -> assertEquals(declared.get().unit().orElse(null), q.unit()));
      result
          .value()
          .ifPresent(v -> assertEquals(v instanceof Quantity, declared.get().unit().isPresent()));
      spoken(result).forEach(message -> assertSpoken(texts, message, key));
      result.why().formula().ifPresent(formula -> assertNamesExist(cells, formula));
    }
  }

  private static List<Message> spoken(Result result) {
    ArrayList<Message> messages = new ArrayList<>(result.why().steps());
    result
        .outcome()
        .match(
            value -> {
              if (value instanceof Choice choice) {
                String key = "choice." + result.key().result() + "." + choice.code();
                messages.add(Message.of(result.key().test(), key));
              }
              return null;
            },
            incomplete -> messages.add(incomplete.reason()),
            unavailable -> messages.add(unavailable.reason()));
    return messages;
  }

  private static void assertSpoken(Texts texts, Message message, ResultKey key) {
    assertTrue(
        message.scope().isEmpty() || texts.find(message.scope(), message.key()).isPresent(),
        () -> "no words for " + message.scope() + "/" + message.key() + " of " + key);
    assertFalse(
        ARGUMENT.matcher(texts.text(message)).find(),
        () -> "argument missing in " + texts.text(message));
    message.args().stream()
        .filter(Message.class::isInstance)
        .forEach(arg -> assertSpoken(texts, (Message) arg, key));
  }

  private static Set<String> cellNames(TestId test, ResultDefinition result) {
    HashSet<String> names = new HashSet<>();
    for (Side side : result.sides()) {
      for (Digit digit : result.digits()) {
        names.add(new ResultKey(test, result.id(), side, digit).cellName());
      }
    }
    return names;
  }

  private static void assertNamesExist(Set<String> known, String formula) {
    Matcher names = CELL_NAME.matcher(formula);
    while (names.find()) {
      assertTrue(known.contains(names.group()), "unknown name in " + formula);
    }
  }

  @Test
  void noChoiceOfASettingMakesResultsFail() {
    TestDefinition definition = module().definition();
    SampleEvaluations samples = new SampleEvaluations(29);
    PatientContext context = samples.context(samples.patient(), samples.full(definition));
    for (Setting setting : definition.settings()) {
      for (String code : setting.codes()) {
        check(module().results(limited(context.withChoice(setting.key(), code))));
      }
    }
  }

  @Test
  void sameInputGivesSameOutput() {
    TestDefinition definition = module().definition();
    SampleEvaluations samples = new SampleEvaluations(7);
    for (int i = 0; i < 50; i++) {
      Patient patient = samples.patient();
      Snapshot snapshot = samples.snapshot(definition, 0.8);
      assertEquals(results(patient, snapshot), results(patient, snapshot));
    }
  }

  @Test
  void nothingIsComputedFromAbsencesAlone() {
    TestDefinition definition = module().definition();
    SampleEvaluations samples = new SampleEvaluations(11);
    for (int i = 0; i < 20; i++) {
      for (Result result : results(samples.patient(), samples.absent(definition))) {
        assertTrue(
            result.value().isEmpty() || restOnWhatIsThere().contains(result.key().result().value()),
            () -> result.key() + " has a value though all is absent");
      }
    }
  }

  @Test
  void anAbsenceMakesAResultIncompleteAndNeverAnother() {
    TestDefinition definition = module().definition();
    SampleEvaluations samples = new SampleEvaluations(13);
    for (int i = 0; i < 100; i++) {
      Patient patient = samples.patient();
      Snapshot full = samples.full(definition);
      ArrayList<Entry> entries = new ArrayList<>(full.entries());
      int at = Math.floorMod(i * 7919, entries.size());
      Entry gone = entries.get(at);
      entries.set(at, samples.entry(gone.key(), samples.absence()));
      Results before = Results.of(results(patient, full));
      for (Result after : results(patient, Snapshot.of(entries))) {
        boolean free = restOnWhatIsThere().contains(after.key().result().value());
        if (!free && after.value().isPresent()) {
          Optional<Result> was = before.result(after.key());
          assertEquals(
              was.map(Result::outcome),
              Optional.of(after.outcome()),
              () -> after.key() + " changed when " + gone.key() + " became absent");
        }
      }
    }
  }

  @Test
  void changingSidesMirrorsTheResults() {
    TestDefinition definition = module().definition();
    SampleEvaluations samples = new SampleEvaluations(17);
    for (int i = 0; i < 100; i++) {
      Patient patient = samples.patient();
      Snapshot snapshot = samples.snapshot(definition, 0.9);
      Results right = Results.of(results(patient, snapshot));
      Patient mirrored = SampleEvaluations.swapped(patient);
      for (Result left : results(mirrored, SampleEvaluations.swapped(snapshot))) {
        ResultKey key = left.key();
        if (!dependOnHand().contains(key.result().value())) {
          ResultKey other =
              new ResultKey(key.test(), key.result(), key.side().opposite(), key.digit());
          assertEquals(
              right.result(other).map(Result::value),
              Optional.of(left.value()),
              () -> key + " is not mirrored");
        }
      }
    }
  }

  @Test
  void sheetsHoldEveryEntry() {
    TestDefinition definition = module().definition();
    SampleEvaluations samples = new SampleEvaluations(19);
    PatientContext context =
        limited(samples.context(samples.patient(), samples.snapshot(definition, 0.7)));
    List<Sheet> sheets = module().sheets(context, module().results(context));
    HashSet<String> named = new HashSet<>();
    sheets.forEach(sheet -> sheet.blocks().forEach(block -> collectNames(block, named)));
    for (Entry entry : context.snapshot().entries()) {
      assertTrue(named.contains(entry.key().cellName()), () -> "not in a sheet: " + entry.key());
    }
  }

  private static void collectNames(Sheet.Block block, Set<String> named) {
    if (block instanceof Sheet.Chart chart) {
      collectNames(chart.table(), named);
    } else if (block instanceof Sheet.Table table) {
      for (List<Sheet.Cell> row : table.rows()) {
        for (Sheet.Cell cell : row) {
          cell.match(w -> w.name(), f -> f.name(), d -> d.name(), b -> Optional.<String>empty())
              .ifPresent(named::add);
        }
      }
    }
  }

  @Test
  void anIncompleteResultNamesWhatIsMissing() {
    TestDefinition definition = module().definition();
    SampleEvaluations samples = new SampleEvaluations(23);
    for (Result result : results(samples.patient(), samples.snapshot(definition, 0.5))) {
      if (result.outcome() instanceof Outcome.Incomplete incomplete) {
        for (ItemKey key : incomplete.missing()) {
          boolean own = key.test().equals(definition.id());
          assertTrue(!own || definition.has(key), () -> "names an unknown key " + key);
        }
      }
    }
  }
}
