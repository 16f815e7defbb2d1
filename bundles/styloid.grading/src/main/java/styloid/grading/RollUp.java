package styloid.grading;

import static styloid.grading.GradingDefinition.ID;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import styloid.grading.Observed.Observation;
import styloid.model.Choice;
import styloid.model.Digit;
import styloid.model.Explanation;
import styloid.model.ItemKey;
import styloid.model.Message;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.ResultKey;
import styloid.model.Side;
import styloid.model.Source;
import styloid.model.Unit;

/**
 * Grades of one side gathered by a nerve or root: lowest, median and number. A statement for the
 * therapist's judgement, no diagnosis.
 */
final class RollUp {
  private final Supply supply;
  private final Side side;
  private final ArrayList<Grade> grades = new ArrayList<>();
  private final ArrayList<Message> restsOn = new ArrayList<>();
  private final ArrayList<ItemKey> open = new ArrayList<>();
  private final LinkedHashSet<Source> sources = new LinkedHashSet<>();

  private RollUp(Supply supply, Side side) {
    this.supply = supply;
    this.side = side;
  }

  /** The results of one side; {@code places} are all of that side. */
  static List<Result> of(Supply supply, Side side, List<Place> places) {
    RollUp rollUp = new RollUp(supply, side);
    for (Supply.Served served : supply.served()) {
      rollUp.sources.addAll(served.sources());
      rollUp.add(places.get(served.at()));
    }
    return rollUp.results();
  }

  private void add(Place place) {
    Optional<Grade> grade = place.grade();
    if (grade.isEmpty()) {
      open.add(place.key(Observation.RANGE));
      return;
    }
    place.inWords().ifPresent(restsOn::add);
    if (grade.get().ranked()) {
      grades.add(grade.get());
    }
  }

  private List<Result> results() {
    if (grades.isEmpty()) {
      Message reason = Message.of(ID, "incomplete.roll-up");
      return List.of(
          Result.incomplete(key("lowest"), reason, open, why("step.lowest")),
          Result.incomplete(key("median"), reason, open, why("step.median")),
          Result.incomplete(key("count"), reason, open, why("step.count")));
    }
    List<Grade> sorted = grades.stream().sorted().toList();
    Grade middle = sorted.get((sorted.size() - 1) / 2);
    return List.of(
        Result.computed(key("lowest"), new Choice(sorted.get(0).code()), why("step.lowest")),
        Result.computed(key("median"), new Choice(middle.code()), why("step.median")),
        Result.computed(
            key("count"),
            Quantity.of(Integer.toString(sorted.size()), Unit.COUNT),
            why("step.count")));
  }

  private ResultKey key(String kind) {
    return new ResultKey(ID, supply.results().get(kind), side, Digit.NONE);
  }

  private Explanation why(String first) {
    ArrayList<Message> steps = new ArrayList<>();
    steps.add(Message.of(ID, first, grades.size(), grades.size() + open.size()));
    steps.addAll(restsOn);
    steps.add(Message.of(ID, "step.judgement"));
    ArrayList<Source> all = new ArrayList<>(sources);
    all.add(Source.commonPractice());
    return new Explanation(steps, all, "roll-up", Optional.empty());
  }
}
