package styloid.finding;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.osgi.service.component.annotations.Component;
import styloid.model.Finding;
import styloid.model.Message;
import styloid.model.PatientContext;
import styloid.model.Result;
import styloid.model.ResultKey;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.spi.FindingRule;
import styloid.spi.Labels;

/**
 * All weak grades of a limb lie in what one nerve, or one root, supplies, at least half of what it
 * supplies is weak, and other motions of the limb are strong. The narrowest such nerve and the
 * narrowest such root are named. What a nerve or root supplies is read from the steps of grading's
 * results for it, which name each motion with its grade. See docs/rules/finding-weak-pattern.md.
 */
@Component(service = FindingRule.class)
public final class WeakPattern implements FindingRule {
  static final String ID = "finding-weak-pattern";

  /** Fewer weak motions are no pattern. */
  private static final int LEAST_WEAK = 2;

  /** Fewer strong motions outside are no contrast. */
  private static final int LEAST_STRONG_OUTSIDE = 2;

  private static final Set<String> MOTION_STEPS = Set.of("step.motion", "step.motion-of-digit");

  /** One nerve or root with the graded motions it supplies; the grade is part of each. */
  private record Line(Result median, Set<Message> motions) {}

  @Override
  public String id() {
    return ID;
  }

  @Override
  public Set<TestId> reads() {
    return Set.of(Visit.GRADING);
  }

  @Override
  public Labels labels() {
    return Labels.beside(WeakPattern.class);
  }

  @Override
  public List<Finding> findings(PatientContext context) {
    ArrayList<Finding> findings = new ArrayList<>();
    for (Side side : Visit.LIMBS) {
      for (String kind : List.of("nerve-", "root-")) {
        findings(lines(context, side, kind), side, findings);
      }
    }
    return findings;
  }

  private static List<Line> lines(PatientContext context, Side side, String kind) {
    return context.results().of(Visit.GRADING).stream()
        .filter(result -> result.key().side() == side)
        .filter(result -> result.key().result().value().startsWith(kind))
        .filter(result -> result.key().result().value().endsWith("-median"))
        .filter(result -> result.value().isPresent())
        .map(result -> new Line(result, motions(result)))
        .toList();
  }

  private static Set<Message> motions(Result result) {
    return result.why().steps().stream()
        .filter(step -> MOTION_STEPS.contains(step.key()))
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private static void findings(List<Line> lines, Side side, List<Finding> to) {
    LinkedHashSet<Message> all = new LinkedHashSet<>();
    lines.forEach(line -> all.addAll(line.motions()));
    Set<Message> weak = all.stream().filter(m -> Visit.weak(grade(m))).collect(Collectors.toSet());
    if (weak.size() < LEAST_WEAK) {
      return;
    }
    List<Line> holdAll =
        lines.stream()
            .filter(line -> line.motions().containsAll(weak))
            .filter(line -> 2 * weak.size() >= line.motions().size())
            .toList();
    int narrowest = holdAll.stream().mapToInt(line -> line.motions().size()).min().orElse(0);
    LinkedHashMap<Set<Message>, List<Line>> bySupply = new LinkedHashMap<>();
    holdAll.stream()
        .filter(line -> line.motions().size() == narrowest)
        .forEach(
            line -> bySupply.computeIfAbsent(line.motions(), m -> new ArrayList<>()).add(line));
    bySupply.forEach(
        (motions, same) -> {
          long strongOutside =
              all.stream().filter(m -> Visit.strong(grade(m)) && !motions.contains(m)).count();
          if (strongOutside >= LEAST_STRONG_OUTSIDE) {
            to.add(finding(same, weak, (int) strongOutside, side));
          }
        });
  }

  /** Of lines whose graded motions are the same ones. */
  private static Finding finding(List<Line> same, Set<Message> weak, int strongOutside, Side side) {
    Line line = same.get(0);
    List<ResultKey> medians = same.stream().map(l -> l.median().key()).toList();
    Message text =
        Message.of(
            ID,
            "weak-pattern",
            Visit.list(ID, medians.stream().map(key -> Visit.named(ID, key)).toList()),
            Visit.code(line.median()).orElseThrow(),
            Visit.list(ID, line.motions().stream().filter(weak::contains).toList()),
            line.motions().size(),
            strongOutside,
            line.median().why().status());
    return new Finding(ID, text, side, List.of(), medians);
  }

  /** The grade a step names last, as the code of a choice. */
  private static String grade(Message step) {
    Object last = step.args().get(step.args().size() - 1);
    return last instanceof Message choice ? choice.key().substring("choice.".length()) : "";
  }
}
