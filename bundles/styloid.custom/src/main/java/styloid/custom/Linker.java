package styloid.custom;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import styloid.exchange.json.Excerpt;
import styloid.exchange.json.NearMiss;
import styloid.exchange.json.Problems;
import styloid.exchange.json.Where;
import styloid.model.Digit;
import styloid.model.Item;
import styloid.model.ItemId;
import styloid.model.ItemKind;
import styloid.model.ResultId;
import styloid.model.Side;
import styloid.spi.Group;
import styloid.spi.ResultDefinition;

/**
 * Finds out what the names of a draft's formulas stand for, and in which order its results are
 * calculated.
 */
final class Linker {
  private final Draft draft;
  private final Problems problems;
  private final Names names = new Names();
  private final Map<String, Term> formulas = new HashMap<>();
  private final Map<ResultId, Rule> rules = new LinkedHashMap<>();
  private final Set<ResultId> underWay = new LinkedHashSet<>();

  Linker(Draft draft, Problems problems) {
    this.draft = draft;
    this.problems = problems;
  }

  /** The rules in the order of calculation; whatever is wrong becomes a problem. */
  List<Rule> link() {
    for (Group group : draft.groups()) {
      for (Item item : group.items()) {
        var numbers = draft.numbers().getOrDefault(item.id(), Map.of());
        names
            .add(Names.of(item.id()), new Subject.OfItem(item, numbers))
            .ifPresent(why -> problems.add(draft.places().get(item.id()), why));
      }
    }
    conditions();
    for (Draft.Norm norm : draft.norms()) {
      names.add(norm).ifPresent(why -> problems.add(norm.where(), why));
    }
    Map<String, Draft.Outcome> byName = new LinkedHashMap<>();
    for (Draft.Outcome outcome : draft.results()) {
      String name = Names.of(outcome.id());
      if (byName.put(name, outcome) != null) {
        problems.add(outcome.where(), "the result " + outcome.id() + " stands twice");
        return List.of();
      }
    }
    draft.results().forEach(outcome -> rule(outcome, byName));
    return List.copyOf(rules.values());
  }

  private void conditions() {
    List<String> known = draft.places().keySet().stream().map(ItemId::value).sorted().toList();
    for (Group group : draft.groups()) {
      for (Item item : group.items()) {
        for (ItemId read : item.askWhen().reads()) {
          if (!draft.places().containsKey(read)) {
            problems.add(
                draft.places().get(item.id()),
                "\"askWhen\" names \""
                    + read
                    + "\", which is no item; "
                    + NearMiss.hint(read.value(), known));
          }
        }
      }
    }
  }

  /** Makes a result's rule after those it reads; false when that could not be done. */
  private boolean rule(Draft.Outcome outcome, Map<String, Draft.Outcome> byName) {
    if (rules.containsKey(outcome.id())) {
      return true;
    }
    if (!underWay.add(outcome.id())) {
      ArrayList<ResultId> circle = new ArrayList<>(underWay);
      problems.add(
          outcome.formula().or(outcome::of).map(Draft.Text::where).orElse(outcome.where()),
          "the results read each other in a circle: "
              + Excerpt.ofMessage(
                  circle.subList(circle.indexOf(outcome.id()), circle.size()).stream()
                          .map(ResultId::value)
                          .collect(Collectors.joining(", "))
                      + ", "
                      + outcome.id()));
      return false;
    }
    boolean made = false;
    try {
      made = readsFirst(outcome, byName) && make(outcome);
    } catch (FormulaException e) {
      refuse(outcome.formula().or(outcome::of).orElseThrow(), e);
    }
    underWay.remove(outcome.id());
    return made;
  }

  private void refuse(Draft.Text text, FormulaException e) {
    Where where = text.where();
    boolean plain = text.text().chars().noneMatch(c -> c == '"' || c == '\\' || c < ' ');
    // behind the opening quote; an escape before the place would shift it, so then the text's own
    int column = plain ? where.column() + 1 + e.at() : where.column();
    problems.add(
        new Where(where.line(), column, where.parent(), where.step()),
        e.getMessage() + " (at character " + (e.at() + 1) + ")");
  }

  private boolean readsFirst(Draft.Outcome outcome, Map<String, Draft.Outcome> byName)
      throws FormulaException {
    LinkedHashSet<String> read = new LinkedHashSet<>();
    if (outcome.formula().isPresent()) {
      Term term = FormulaReader.read(outcome.formula().get().text());
      formulas.put(outcome.id().value(), term);
      term.names(name -> read.add(name.name()));
    }
    outcome.of().ifPresent(of -> read.add(of.text()));
    for (String name : read) {
      for (String each : List.of(name, name.replaceAll("_(right|left|other)$", ""))) {
        Draft.Outcome needed = byName.get(each);
        if (needed != null && !rule(needed, byName)) {
          return false;
        }
      }
    }
    return true;
  }

  private boolean make(Draft.Outcome outcome) throws FormulaException {
    int before = problems.count();
    Rule rule = outcome.formula().isPresent() ? formula(outcome) : classes(outcome);
    if (rule == null || problems.count() > before) {
      return false;
    }
    ResultDefinition result = rule.result();
    Subject subject =
        new Subject.OfResult(outcome.id(), result.sides(), result.digits(), result.unit());
    Optional<String> refused = names.add(Names.of(outcome.id()), subject);
    refused.ifPresent(why -> problems.add(outcome.where(), why));
    rules.put(outcome.id(), rule);
    return refused.isEmpty();
  }

  private Rule formula(Draft.Outcome outcome) throws FormulaException {
    Term term = formulas.get(outcome.id().value());
    LinkedHashMap<String, Reference> reads = new LinkedHashMap<>();
    ArrayList<Term.Name> written = new ArrayList<>();
    term.names(written::add);
    for (Term.Name name : written) {
      reads.put(name.name(), names.find(name));
    }
    if (reads.isEmpty()) {
      throw new FormulaException(0, "the formula reads nothing that is recorded");
    }
    Measures measures = new Measures(reads, outcome.unit().orElseThrow());
    measures.checkUses(term);
    measures.check(term, outcome.unit().get());
    ResultDefinition result = definition(outcome, new ArrayList<>(reads.values()));
    for (Side side : result.sides()) {
      for (Digit digit : result.digits()) {
        new Counts(reads, side, digit).check(term, false);
      }
    }
    return new Rule.ByFormula(
        result,
        outcome.source().orElse(draft.source()),
        outcome.formula().get().text(),
        term,
        reads,
        measures.units());
  }

  private Rule classes(Draft.Outcome outcome) throws FormulaException {
    LinkedHashMap<String, Reference> reads = new LinkedHashMap<>();
    Optional<Reference> of = Optional.empty();
    if (outcome.of().isPresent()) {
      of = Optional.of(names.find(outcome.of().get().text(), 0));
      if (of.get().subject().unit().isEmpty()) {
        throw new FormulaException(0, "\"" + of.get().name() + "\" is no number");
      }
      reads.put(of.get().name(), of.get());
    }
    ArrayList<Rule.Answer> answers = new ArrayList<>();
    ArrayList<Draft.Limit> bands = new ArrayList<>();
    for (Draft.Limit limit : outcome.classes()) {
      if (limit.when().isPresent()) {
        Rule.Answer answer = answer(limit);
        if (answer == null) {
          return null;
        }
        answers.add(answer);
        reads.putIfAbsent(answer.reference().name(), answer.reference());
      } else {
        bands.add(limit);
      }
    }
    if (bands.isEmpty() == of.isPresent() || reads.isEmpty()) {
      problems.add(
          outcome.where(), "classes with limits need \"of\", the name of the number they are of");
      return null;
    }
    overlaps(bands);
    ResultDefinition result = definition(outcome, new ArrayList<>(reads.values()));
    single(outcome, reads, result);
    Rule rule =
        new Rule.ByClass(
            result, outcome.source().orElse(draft.source()), of, answers, bands, reads);
    return rule;
  }

  private void single(
      Draft.Outcome outcome, Map<String, Reference> reads, ResultDefinition result) {
    for (Side side : result.sides()) {
      for (Digit digit : result.digits()) {
        for (Reference read : reads.values()) {
          if (read.count(side, digit) != 1) {
            problems.add(
                outcome.where(),
                "\"" + read.name() + "\" must stand for one value here; make a result of it first");
            return;
          }
        }
      }
    }
  }

  private Rule.Answer answer(Draft.Limit limit) {
    Draft.When when = limit.when().orElseThrow();
    Optional<Item> item = names.item(when.item().text());
    if (item.isEmpty() || !(item.get().kind() instanceof ItemKind.Choices choices)) {
      problems.add(
          when.item().where(),
          "\""
              + Excerpt.of(when.item().text())
              + "\" is no item with choices; "
              + NearMiss.hint(when.item().text(), names.choices()));
      return null;
    }
    for (Draft.Text code : when.codes()) {
      if (!choices.codes().contains(code.text())) {
        problems.add(
            code.where(),
            "\""
                + Excerpt.of(code.text())
                + "\" is no answer of "
                + item.get().id()
                + "; "
                + NearMiss.hint(code.text(), choices.codes()));
        return null;
      }
    }
    Subject subject = new Subject.OfItem(item.get(), Map.of());
    Reference reference = new Reference(Names.of(item.get().id()), subject, Reference.Which.OWN);
    List<String> codes = when.codes().stream().map(Draft.Text::text).toList();
    return new Rule.Answer(item.get().id(), reference, codes, limit.code());
  }

  private void overlaps(List<Draft.Limit> bands) {
    for (int i = 0; i < bands.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (bands.get(i).band().overlaps(bands.get(j).band())) {
          problems.add(
              bands.get(i).where(),
              "the class "
                  + bands.get(i).code()
                  + " overlaps "
                  + bands.get(j).code()
                  + "; let one of them end before, or not include, what the other includes");
          return;
        }
      }
    }
  }

  /** Sides and digits as written, else those of the first thing read that is of a limb. */
  private ResultDefinition definition(Draft.Outcome outcome, List<Reference> reads) {
    Optional<Reference> first =
        reads.stream().filter(r -> !(r.subject() instanceof Subject.OfNorm)).findFirst();
    boolean ofOneSide =
        first.map(Reference::which).filter(w -> w == Reference.Which.RIGHT).isPresent()
            || first.map(Reference::which).filter(w -> w == Reference.Which.LEFT).isPresent();
    Set<Side> sides =
        outcome
            .sides()
            .orElseGet(
                () ->
                    ofOneSide
                        ? Item.NO_SIDE
                        : first.map(r -> r.subject().sides()).orElse(Item.NO_SIDE));
    Set<Digit> digits =
        outcome
            .digits()
            .orElseGet(() -> first.map(r -> r.subject().digits()).orElse(Item.NO_DIGIT));
    return new ResultDefinition(
        outcome.id(), outcome.unit(), outcome.decimals(), sides, digits, group(reads));
  }

  private Optional<String> group(List<Reference> reads) {
    for (Reference read : reads) {
      if (read.subject() instanceof Subject.OfItem of) {
        return draft.groups().stream()
            .filter(group -> group.items().contains(of.item()))
            .map(Group::id)
            .findFirst();
      } else if (read.subject() instanceof Subject.OfResult of) {
        return Optional.ofNullable(rules.get(of.id())).flatMap(rule -> rule.result().group());
      }
    }
    return Optional.empty();
  }
}
