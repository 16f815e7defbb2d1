package styloid.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import styloid.grading.Observed.Observation;
import styloid.model.Choice;
import styloid.model.Codes;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.Evaluation;
import styloid.model.Item;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.PatientContext;
import styloid.model.Precaution;
import styloid.model.Side;
import styloid.model.Snapshot;
import styloid.spi.Group;
import styloid.spi.TestDefinition;
import styloid.spi.Withheld;
import styloid.testkit.SampleEvaluations;

/** What is asked of each motion, held against the table that was written without the program. */
class AskedTest {
  private final TestDefinition definition = new Grading().definition();
  private final SampleEvaluations samples = new SampleEvaluations(11);

  /**
   * For each motion and every set of observations: what the table says is needed next is the one
   * thing asked, and nothing is once the table gives a grade. Where observations contradict, it is
   * one of the two that has to be corrected, whatever else is asked.
   */
  @ParameterizedTest
  @EnumSource(Scheme.class)
  void onlyWhatIsStillNeededIsAsked(Scheme scheme) throws IOException {
    List<String[]> table = GradeRuleTest.table();
    int decided = 0;
    for (Motion motion : Motion.catalogue(Muscle.table())) {
      Group group = definition.groupOf(new ItemId(motion.id() + "-range")).orElseThrow();
      Digit digit = new TreeSet<>(motion.digits()).first();
      for (Observed seen : Combinations.all(motion.criteria())) {
        String outcome = GradeRuleTest.first(table, motion.criteria(), scheme, seen)[7];
        if (!outcome.startsWith("contradiction")) {
          PatientContext context = context(motion, digit, scheme, seen);
          assertEquals(seen, new Place(context, motion, group, Side.LEFT, digit).observed());
          List<String> needed =
              outcome.startsWith("next ")
                  ? List.of(motion.id() + "-" + outcome.substring("next ".length()))
                  : List.of();
          assertEquals(needed, asked(group, digit, context), () -> motion.id() + " " + seen);
          decided++;
        }
      }
    }
    assertTrue(decided > 42 * 100, () -> "too few ways were tried");
  }

  private PatientContext context(Motion motion, Digit digit, Scheme scheme, Observed seen) {
    ArrayList<Entry> entries = new ArrayList<>();
    for (Observation what : EnumSet.allOf(Observation.class)) {
      ItemId item = new ItemId(motion.id() + "-" + what.code());
      ItemKey key = new ItemKey(definition.id(), item, Side.LEFT, digit, 1);
      answer(seen, what).ifPresent(a -> entries.add(samples.entry(key, new Choice(Codes.of(a)))));
    }
    PatientContext plain = samples.context(samples.patient(), Snapshot.of(entries));
    Evaluation head = plain.evaluation().withChoice(Scheme.CHOICE, scheme.code());
    List<Precaution> limits = seen.withheld() ? List.of(limit(motion)) : List.of();
    return new PatientContext(
        plain.patient(), head, limits, plain.snapshot(), plain.results(), List.of());
  }

  private static Optional<? extends Enum<?>> answer(Observed seen, Observation what) {
    return switch (what) {
      case RANGE -> seen.range();
      case HOLD -> seen.hold();
      case REDUCED -> seen.reduced();
      case CONTRACTION -> seen.contraction();
    };
  }

  private static Precaution limit(Motion motion) {
    return new Precaution(
        Precaution.Kind.NO_RESISTANCE,
        motion.region(),
        Side.LEFT,
        Digit.NONE,
        Optional.empty(),
        Optional.empty(),
        "A. Surgeon",
        "");
  }

  /** What a form asks: what the grade waits for, is not recorded, and no precaution withholds. */
  private List<String> asked(Group group, Digit digit, PatientContext context) {
    ArrayList<String> asked = new ArrayList<>();
    for (Item item : group.items()) {
      ItemKey key = new ItemKey(definition.id(), item.id(), Side.LEFT, digit, 1);
      boolean open =
          !item.optional()
              && context.snapshot().entry(key).isEmpty()
              && item.askWhen().holds(context.snapshot(), key);
      if (open && withheldBy(group, item, key, context).isEmpty()) {
        asked.add(item.id().value());
      }
    }
    return asked;
  }

  private static List<Precaution> withheldBy(
      Group group, Item item, ItemKey key, PatientContext context) {
    return Withheld.by(group, item, key, context.precautions(), context.evaluation().date());
  }
}
