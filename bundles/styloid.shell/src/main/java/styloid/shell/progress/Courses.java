package styloid.shell.progress;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import styloid.model.Digit;
import styloid.model.ErrorRange;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.ItemKind;
import styloid.model.PatientContext;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.Side;
import styloid.model.Snapshot;
import styloid.model.TestId;
import styloid.model.Unit;
import styloid.spi.TestDefinition;

/** Reads the course of measures out of a patient context. Pure. */
final class Courses {
  private final PatientContext context;
  private final List<PatientContext.Past> visits;

  Courses(PatientContext context) {
    this.context = context;
    ArrayList<PatientContext.Past> all = new ArrayList<>(context.past());
    java.util.Collections.reverse(all);
    all.add(new PatientContext.Past(context.evaluation(), context.snapshot()));
    this.visits = List.copyOf(all);
  }

  /** Every measure any visit has a number of, in the order of the tests. */
  List<Course> all(List<TestDefinition> tests) {
    ArrayList<Course> found = new ArrayList<>();
    for (TestDefinition test : tests) {
      test.groups().stream()
          .flatMap(group -> group.items().stream())
          .forEach(item -> found.addAll(of(test.id(), item)));
    }
    return found;
  }

  /** The courses of an item, one a digit, that have a number. */
  List<Course> of(TestId test, Item item) {
    if (!(item.kind() instanceof ItemKind.Number kind)) {
      return List.of();
    }
    ArrayList<Course> found = new ArrayList<>();
    for (Digit digit : EnumSet.copyOf(item.digits())) {
      Course course = of(test, item, digit, unit(test, item, digit, kind));
      if (course.measured() > 0) {
        found.add(course);
      }
    }
    return found;
  }

  private Course of(TestId test, Item item, Digit digit, Unit unit) {
    ArrayList<Visit> course = new ArrayList<>();
    for (PatientContext.Past visit : visits) {
      EnumMap<Side, Reading> readings = new EnumMap<>(Side.class);
      for (Side side : item.sides()) {
        readings.put(side, Reading.of(visit.snapshot(), test, item, side, digit, unit));
      }
      LocalDate day = visit.evaluation().date();
      course.add(new Visit(day, readings));
    }
    return new Course(test, item, digit, unit, course, errors(test, item, digit));
  }

  /** The unit of the newest value, whatever the side. */
  private Unit unit(TestId test, Item item, Digit digit, ItemKind.Number kind) {
    for (int at = visits.size() - 1; at >= 0; at--) {
      Snapshot snapshot = visits.get(at).snapshot();
      for (ItemKey key : item.keys(test)) {
        if (key.digit() == digit && snapshot.quantity(key).isPresent()) {
          return snapshot.quantity(key).map(Quantity::unit).orElseThrow();
        }
      }
    }
    return kind.unit();
  }

  private Map<Side, ErrorRange> errors(TestId test, Item item, Digit digit) {
    EnumMap<Side, ErrorRange> errors = new EnumMap<>(Side.class);
    for (Result result : context.results().of(test)) {
      result
          .why()
          .error()
          .filter(e -> e.item().equals(item.id()) && result.key().digit() == digit)
          .ifPresent(e -> errors.put(result.key().side(), e));
    }
    return errors;
  }
}
