package styloid.custom;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import styloid.model.Digit;
import styloid.model.PatientContext;
import styloid.model.Result;
import styloid.model.ResultKey;
import styloid.model.Side;
import styloid.spi.Formulas;
import styloid.spi.ResultDefinition;
import styloid.spi.TestDefinition;
import styloid.spi.TestModule;

/** A test module made from a declared file. */
final class DeclaredModule implements TestModule {
  private final TestDefinition definition;
  private final List<Rule> rules;
  private final Calculation calculation;

  /**
   * A module.
   *
   * @param rules in the order of calculation
   */
  DeclaredModule(TestDefinition definition, List<Rule> rules, Formulas formulas) {
    this.definition = definition;
    this.rules = List.copyOf(rules);
    this.calculation = new Calculation(definition.id(), formulas);
  }

  @Override
  public TestDefinition definition() {
    return definition;
  }

  @Override
  public List<Result> results(PatientContext context) {
    LinkedHashMap<ResultKey, Result> done = new LinkedHashMap<>();
    Inputs inputs = new Inputs(definition.id(), context, done);
    for (Rule rule : rules) {
      for (ResultKey key : keys(rule.result())) {
        done.put(key, calculation.result(key, rule, inputs));
      }
    }
    ArrayList<Result> results = new ArrayList<>();
    for (ResultDefinition result : definition.results()) {
      keys(result).forEach(key -> results.add(done.get(key)));
    }
    return results;
  }

  private List<ResultKey> keys(ResultDefinition result) {
    ArrayList<ResultKey> keys = new ArrayList<>();
    for (Side side : EnumSet.copyOf(result.sides())) {
      for (Digit digit : EnumSet.copyOf(result.digits())) {
        keys.add(new ResultKey(definition.id(), result.id(), side, digit));
      }
    }
    return keys;
  }

  /**
   * Ids of results that are not mirrored when the sides are: they rest on a norm, which may differ
   * by hand, or name the right or the left side.
   */
  Set<String> boundToHand() {
    TreeSet<String> bound = new TreeSet<>();
    for (Rule rule : rules) {
      for (Map.Entry<String, Reference> read : rule.reads().entrySet()) {
        Reference reference = read.getValue();
        boolean named =
            reference.which() == Reference.Which.RIGHT || reference.which() == Reference.Which.LEFT;
        boolean passedOn =
            reference.subject() instanceof Subject.OfResult of && bound.contains(of.id().value());
        if (named || passedOn || reference.subject() instanceof Subject.OfNorm) {
          bound.add(rule.result().id().value());
        }
      }
    }
    return bound;
  }
}
