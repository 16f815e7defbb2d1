package styloid.custom;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import styloid.model.Choice;
import styloid.model.Digit;
import styloid.model.ItemKey;
import styloid.model.Message;
import styloid.model.Outcome;
import styloid.model.PatientContext;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.ResultKey;
import styloid.model.Side;
import styloid.model.Source;
import styloid.model.TestId;
import styloid.model.Unit;
import styloid.model.Value;
import styloid.model.norm.NormLookup;
import styloid.model.norm.NormQuery;
import styloid.model.norm.NormRow;
import styloid.spi.ExactFactor;

/** Gets the values names stand for from an evaluation and the results calculated so far. */
record Inputs(TestId test, PatientContext context, Map<ResultKey, Result> results) {

  /** All values a name stands for, in the order side, digit, trial. */
  List<Input> of(Reference reference, Side side, Digit digit, Map<Unit.Dimension, Unit> units) {
    ArrayList<Input> inputs = new ArrayList<>();
    for (Reference.Place place : reference.places(side, digit).orElseThrow()) {
      if (reference.subject() instanceof Subject.OfItem item) {
        for (int trial = 1; trial <= item.trials(); trial++) {
          ItemKey key = new ItemKey(test, item.item().id(), place.side(), place.digit(), trial);
          inputs.add(entry(key, item, units));
        }
      } else if (reference.subject() instanceof Subject.OfResult result) {
        ResultKey key = new ResultKey(test, result.id(), place.side(), place.digit());
        inputs.add(result(results.get(key), units));
      } else if (reference.subject() instanceof Subject.OfNorm norm) {
        inputs.add(norm(norm, side, units));
      }
    }
    return inputs;
  }

  private Input entry(ItemKey key, Subject.OfItem item, Map<Unit.Dimension, Unit> units) {
    Optional<Value> value = context.snapshot().value(key);
    if (value.isPresent() && value.get() instanceof Quantity quantity) {
      Unit target = units.getOrDefault(quantity.unit().dimension(), quantity.unit());
      return present(
          quantity.in(target).amount(),
          key.cellName() + ExactFactor.between(quantity.unit(), target),
          Say.quantity(test, quantity),
          List.of());
    }
    if (value.isPresent() && value.get() instanceof Choice choice) {
      Message shown = Message.of(test, "choice." + key.item() + "." + choice.code());
      if (item.numbers().isEmpty()) {
        return new Input(
            Optional.empty(),
            Optional.of(choice.code()),
            Optional.empty(),
            shown,
            List.of(),
            Optional.empty(),
            List.of());
      }
      BigDecimal number = item.numbers().get(choice.code());
      return number == null
          ? Input.unavailable(Say.of(test, "no-number", shown), List.of())
          : new Input(
              Optional.of(number),
              Optional.empty(),
              Optional.empty(),
              shown,
              List.of(),
              Optional.empty(),
              List.of());
    }
    return Input.missing(List.of(key), List.of());
  }

  private static Input present(
      BigDecimal number, String live, Message shown, List<Source> sources) {
    return new Input(
        Optional.of(number),
        Optional.empty(),
        Optional.of(live),
        shown,
        List.of(),
        Optional.empty(),
        sources);
  }

  private Input result(Result result, Map<Unit.Dimension, Unit> units) {
    List<Source> sources = result.why().sources();
    if (result.outcome() instanceof Outcome.Incomplete incomplete) {
      return Input.missing(incomplete.missing(), sources);
    } else if (result.outcome() instanceof Outcome.Unavailable unavailable) {
      return Input.unavailable(unavailable.reason(), sources);
    }
    Quantity quantity = result.quantity().orElseThrow();
    Unit target = units.getOrDefault(quantity.unit().dimension(), quantity.unit());
    // the cell holds the number even where it has no formula of its own
    return present(
        quantity.in(target).amount(),
        result.key().cellName() + ExactFactor.between(quantity.unit(), target),
        Say.rounded(test, quantity),
        sources);
  }

  private Input norm(Subject.OfNorm norm, Side side, Map<Unit.Dimension, Unit> units) {
    NormQuery query = NormQuery.of(context, side, norm.keys());
    Source table = norm.table().source(norm.table().rows().get(0));
    NormLookup found = norm.table().find(query);
    return found.match(
        row -> figure(norm, row, units),
        missing -> Input.unavailable(Say.missing(test, missing), List.of(table)));
  }

  private Input figure(Subject.OfNorm norm, NormRow row, Map<Unit.Dimension, Unit> units) {
    Optional<BigDecimal> figure =
        switch (norm.figure()) {
          case "mean" -> row.mean();
          case "sd" -> row.sd();
          default -> Optional.ofNullable(row.centiles().get(centile(norm.figure())));
        };
    List<Source> sources = List.of(norm.table().source(row));
    if (figure.isEmpty()) {
      return Input.unavailable(Say.of(test, "norm.no-figure"), sources);
    }
    Unit unit = norm.table().unit();
    Unit target = units.getOrDefault(unit.dimension(), unit);
    BigDecimal number = unit.convert(figure.get(), target);
    return present(
        number,
        number.toPlainString(),
        Say.of(
            test,
            "norm.figure",
            Say.quantity(test, new Quantity(figure.get(), unit)),
            row.age().toString(),
            norm.table().population()),
        sources);
  }

  private static int centile(String figure) {
    return Integer.parseInt(figure.substring(1));
  }
}
