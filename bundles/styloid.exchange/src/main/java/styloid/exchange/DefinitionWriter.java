package styloid.exchange;

import java.io.IOException;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import styloid.model.Caution;
import styloid.model.Codes;
import styloid.model.Condition;
import styloid.model.Demand;
import styloid.model.Digit;
import styloid.model.Item;
import styloid.model.ItemKind;
import styloid.model.Unit;
import styloid.spi.Group;
import styloid.spi.Guide;
import styloid.spi.Labels;
import styloid.spi.ResultDefinition;
import styloid.spi.Setting;
import styloid.spi.TestDefinition;
import styloid.spi.Timer;

/** Writes the definition of a test with its labels. */
final class DefinitionWriter {
  private final JsonWriter out;

  DefinitionWriter(JsonWriter out) {
    this.out = out;
  }

  void definition(TestDefinition definition) throws IOException {
    out.object().key("format").number(DefinitionReader.FORMAT);
    out.key("test").text(definition.id().value());
    out.key("version").text(definition.version());
    out.key("order").number(definition.order());
    out.key("groups").list();
    for (Group group : definition.groups()) {
      group(group);
    }
    out.end().key("cautions").list();
    for (Caution caution : definition.cautions()) {
      out.inlineObject().key("id").text(caution.id());
      out.key("source").text(caution.source().citation());
      out.key("status").text(caution.source().status().code()).end();
    }
    out.end();
    texts("testCautions", definition.testCautions());
    out.key("results").list();
    for (ResultDefinition result : definition.results()) {
      result(result);
    }
    out.end();
    texts("reads", new TreeSet<>(definition.reads()));
    labels(definition.labels());
    if (definition.restAs().isPresent()) {
      out.key("restAs").text(definition.restAs().get());
    }
    timers(definition.timers());
    settings(definition.settings());
    out.end();
  }

  private void timers(List<Timer> timers) throws IOException {
    if (timers.isEmpty()) {
      return;
    }
    out.key("timers").list();
    for (Timer timer : timers) {
      out.inlineObject().key("kind").text(timer.kind().code());
      out.key("seconds").number(timer.seconds());
      texts("items", new TreeSet<>(timer.items()));
      if (timer.letGo().isPresent()) {
        Timer.LetGo letGo = timer.letGo().get();
        out.key("letGo").inlineObject().key("atOnce").text(letGo.atOnce());
        out.key("during").text(letGo.during());
        if (letGo.time().isPresent()) {
          out.key("time").text(letGo.time().get().value());
        }
        out.end();
      }
      out.key("source").text(timer.source().citation());
      out.key("status").text(timer.source().status().code()).end();
    }
    out.end();
  }

  private void settings(List<Setting> settings) throws IOException {
    if (settings.isEmpty()) {
      return;
    }
    out.key("settings").list();
    for (Setting setting : settings) {
      out.inlineObject().key("key").text(setting.key());
      texts("codes", setting.codes());
      out.key("preset").text(setting.preset()).end();
    }
    out.end();
  }

  private void group(Group group) throws IOException {
    out.object().key("id").text(group.id());
    out.key("region").text(group.region().code());
    codes("loads", group.loads());
    out.key("walk").text(group.walk().code());
    out.key("layout").text(group.layout().code());
    texts("cautions", group.cautions());
    if (!group.guide().equals(Guide.none())) {
      new GuideWriter(out).guide(group.guide());
    }
    out.key("items").list();
    for (Item item : group.items()) {
      item(item);
    }
    out.end().end();
  }

  private void item(Item item) throws IOException {
    out.inlineObject().key("id").text(item.id().value());
    kind(item.kind());
    codes("sides", item.sides());
    if (!item.digits().equals(Set.of(Digit.NONE))) {
      codes("digits", item.digits());
    }
    if (item.trials() != 1) {
      out.key("trials").number(item.trials());
    }
    if (!item.askWhen().equals(Condition.always())) {
      out.key("askWhen");
      condition(item.askWhen());
    }
    if (item.demand() != Demand.NONE) {
      out.key("demand").text(item.demand().code());
    }
    if (item.optional()) {
      out.key("optional").truth(true);
    }
    if (item.joint().isPresent()) {
      out.key("joint").text(item.joint().get().code());
    }
    out.end();
  }

  private void kind(ItemKind kind) throws IOException {
    if (kind instanceof ItemKind.Number number) {
      out.key("number").inlineObject();
      texts("units", number.units().stream().map(Unit::ucum).toList());
      out.key("min").text(number.min().toString());
      out.key("likelyMin").text(number.likelyMin().toString());
      out.key("likelyMax").text(number.likelyMax().toString());
      out.key("max").text(number.max().toString());
      out.key("decimals").number(number.decimals()).end();
    } else if (kind instanceof ItemKind.Choices choices) {
      texts("choices", choices.codes());
    } else {
      out.key("words").number(((ItemKind.Words) kind).longest());
    }
  }

  private void condition(Condition condition) throws IOException {
    out.inlineObject();
    if (condition instanceof Condition.Is is) {
      out.key("item").text(is.item().value());
      texts("is", new TreeSet<>(is.codes()));
    } else if (condition instanceof Condition.Recorded recorded) {
      out.key("recorded").text(recorded.item().value());
    } else if (condition instanceof Condition.Chosen chosen) {
      out.key("setting").text(chosen.setting());
      out.key("chosen").text(chosen.code());
      out.key("preset").text(chosen.preset());
    } else if (condition instanceof Condition.Not not) {
      out.key("not");
      condition(not.condition());
    } else if (condition instanceof Condition.All all) {
      conditions("all", all.conditions());
    } else if (condition instanceof Condition.Any any) {
      conditions("any", any.conditions());
    } else {
      out.key("always").truth(true);
    }
    out.end();
  }

  private void conditions(String key, List<Condition> conditions) throws IOException {
    out.key(key).inlineList();
    for (Condition condition : conditions) {
      condition(condition);
    }
    out.end();
  }

  private void result(ResultDefinition result) throws IOException {
    out.inlineObject().key("id").text(result.id().value());
    if (result.unit().isPresent()) {
      out.key("unit").text(result.unit().get().ucum());
    }
    out.key("decimals").number(result.decimals());
    codes("sides", result.sides());
    codes("digits", result.digits());
    if (result.group().isPresent()) {
      out.key("group").text(result.group().get());
    }
    if (!result.notable().isEmpty()) {
      texts("notable", new TreeSet<>(result.notable()));
    }
    out.end();
  }

  private void labels(Labels labels) throws IOException {
    out.key("labels").object();
    for (Map.Entry<String, Map<String, String>> language : labels.byLanguage().entrySet()) {
      out.key(language.getKey()).object();
      for (Map.Entry<String, String> word : new TreeMap<>(language.getValue()).entrySet()) {
        out.key(word.getKey()).text(word.getValue());
      }
      out.end();
    }
    out.end();
  }

  /** Codes in the order of their type. */
  private <E extends Enum<E>> void codes(String key, Set<E> set) throws IOException {
    Set<E> sorted = set.isEmpty() ? set : EnumSet.copyOf(set);
    texts(key, sorted.stream().map(Codes::of).toList());
  }

  private void texts(String key, Collection<?> texts) throws IOException {
    out.key(key).inlineList();
    for (Object text : texts) {
      out.text(text.toString());
    }
    out.end();
  }
}
