package styloid.custom;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import styloid.model.Choice;
import styloid.model.Explanation;
import styloid.model.ItemKey;
import styloid.model.Message;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.ResultKey;
import styloid.model.Source;
import styloid.model.TestId;
import styloid.model.Unit;
import styloid.spi.Formulas;

/** Calculates single results. */
final class Calculation {
  private final TestId test;
  private final Formulas formulas;

  Calculation(TestId test, Formulas formulas) {
    this.test = test;
    this.formulas = formulas;
  }

  /** A result and how it came about, so far. */
  private final class Working {
    private final ResultKey key;
    private final String rule;
    private final ArrayList<Message> steps = new ArrayList<>();
    private final LinkedHashSet<Source> sources = new LinkedHashSet<>();
    private final LinkedHashSet<ItemKey> missing = new LinkedHashSet<>();
    private Optional<Message> unavailable = Optional.empty();
    private Optional<String> live = Optional.empty();

    Working(ResultKey key, String rule, Source source) {
      this.key = key;
      this.rule = rule;
      sources.add(source);
    }

    void take(Reference reference, List<Input> inputs) {
      for (Input input : inputs) {
        missing.addAll(input.missing());
        unavailable = unavailable.or(input::unavailable);
        sources.addAll(input.sources());
      }
      boolean there =
          inputs.stream().allMatch(i -> i.missing().isEmpty() && i.unavailable().isEmpty());
      if (there) {
        List<Message> shown = inputs.stream().map(Input::shown).toList();
        steps.add(Say.of(test, "step.input", reference.name(), Say.list(test, shown)));
      }
    }

    Explanation why() {
      return new Explanation(steps, List.copyOf(sources), rule, live);
    }

    /** The result without a value; missing entries come before every other reason. */
    Optional<Result> without() {
      if (!missing.isEmpty()) {
        List<Message> names =
            missing.stream().map(k -> Message.of(k.test(), "item." + k.item())).distinct().toList();
        Message reason = Say.of(test, "incomplete", Say.list(test, names));
        return Optional.of(Result.incomplete(key, reason, List.copyOf(missing), why()));
      }
      return unavailable.map(reason -> Result.unavailable(key, reason, why()));
    }
  }

  Result result(ResultKey key, Rule rule, Inputs inputs) {
    return rule instanceof Rule.ByFormula formula
        ? number(key, formula, inputs)
        : classified(key, (Rule.ByClass) rule, inputs);
  }

  private Result number(ResultKey key, Rule.ByFormula rule, Inputs inputs) {
    Working working = new Working(key, "declared-formula", rule.source());
    working.steps.add(Say.of(test, "step.formula", Message.verbatim(rule.text())));
    Map<String, List<Input>> values = new HashMap<>();
    rule.reads()
        .forEach(
            (name, reference) -> {
              List<Input> found = inputs.of(reference, key.side(), key.digit(), rule.units());
              values.put(name, found);
              working.take(reference, found);
            });
    Optional<Result> without = working.without();
    if (without.isPresent()) {
      return without.get();
    }
    working.live = Spelling.live(rule.formula(), values);
    Spelling spelling = Spelling.neutral(rule.formula(), values);
    Formulas.Answer answer = formulas.evaluate(spelling.text(), spelling.values());
    if (answer.number().isEmpty()) {
      working.live = Optional.empty();
      return Result.unavailable(
          key, Say.of(test, "no-value", Message.verbatim(answer.fault())), working.why());
    }
    Unit unit = rule.result().unit().orElseThrow();
    Quantity quantity = Quantity.of(answer.number().get(), unit);
    working.steps.add(Say.of(test, "step.gives", Say.rounded(test, quantity)));
    return Result.computed(key, quantity, working.why());
  }

  private Result classified(ResultKey key, Rule.ByClass rule, Inputs inputs) {
    Working working = new Working(key, "declared-class", rule.source());
    working.steps.add(Say.of(test, "step.class"));
    for (Rule.Answer answer : rule.answers()) {
      List<Input> given = inputs.of(answer.reference(), key.side(), key.digit(), Map.of());
      Optional<String> code = given.get(0).text();
      if (code.isPresent() && answer.codes().contains(code.get())) {
        working.take(answer.reference(), given);
        return computed(working, key, answer.to());
      }
    }
    for (Rule.Answer answer : rule.answers()) {
      Input given = inputs.of(answer.reference(), key.side(), key.digit(), Map.of()).get(0);
      working.missing.addAll(given.missing());
    }
    if (rule.of().isEmpty()) {
      return working
          .without()
          .orElseGet(() -> Result.unavailable(key, Say.of(test, "class.no-answer"), working.why()));
    }
    Reference of = rule.of().get();
    List<Input> numbers = inputs.of(of, key.side(), key.digit(), Map.of());
    working.take(of, numbers);
    Optional<Result> without = working.without();
    if (without.isPresent()) {
      return without.get();
    }
    BigDecimal number = numbers.get(0).number().orElseThrow();
    for (Draft.Limit limit : rule.bands()) {
      if (limit.band().holds(number)) {
        working.steps.add(Say.of(test, "step.band", band(limit.band())));
        return computed(working, key, limit.code());
      }
    }
    return Result.unavailable(key, Say.of(test, "class.none", Say.shown(number)), working.why());
  }

  private Result computed(Working working, ResultKey key, String code) {
    return Result.computed(key, new Choice(code), working.why());
  }

  /** The band in words, saying of each limit whether it is included. */
  private Message band(Draft.Band band) {
    ArrayList<Message> ends = new ArrayList<>();
    band.low().ifPresent(l -> ends.add(Say.of(test, band.lowIncluded() ? "from" : "above", l)));
    band.high().ifPresent(h -> ends.add(Say.of(test, band.highIncluded() ? "to" : "below", h)));
    return Say.list(test, ends);
  }
}
