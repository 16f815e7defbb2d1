package styloid.finding;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.osgi.service.component.annotations.Component;
import styloid.model.Digit;
import styloid.model.Finding;
import styloid.model.Message;
import styloid.model.PatientContext;
import styloid.model.Result;
import styloid.model.ResultId;
import styloid.model.ResultKey;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.spi.FindingRule;
import styloid.spi.Labels;

/**
 * Grip is below its norm while every finger flexor graded, at least those of all four PIP joints,
 * is 5. See docs/rules/finding-grip-low.md.
 */
@Component(service = FindingRule.class)
public final class GripLow implements FindingRule {
  static final String ID = "finding-grip-low";
  private static final ResultId BAND = new ResultId("band-power");
  private static final Set<String> LOW = Set.of("below", "far-below");
  private static final Set<String> FLEXORS =
      Set.of("mp-flexion-grade", "pip-flexion-grade", "dip-flexion-grade");

  /** The PIP joints of the four fingers. */
  private static final int LEAST_PIP_GRADES = 4;

  @Override
  public String id() {
    return ID;
  }

  @Override
  public Set<TestId> reads() {
    return Set.of(Visit.GRADING, Visit.GRIP);
  }

  @Override
  public Labels labels() {
    return Labels.beside(GripLow.class);
  }

  @Override
  public List<Finding> findings(PatientContext context) {
    ArrayList<Finding> findings = new ArrayList<>();
    for (Side side : Visit.LIMBS) {
      ResultKey key = new ResultKey(Visit.GRIP, BAND, side, Digit.NONE);
      context
          .results()
          .result(key)
          .filter(band -> Visit.code(band).filter(LOW::contains).isPresent())
          .ifPresent(band -> finding(new Visit(context), band, findings));
    }
    return findings;
  }

  private static void finding(Visit visit, Result band, List<Finding> to) {
    Side side = band.key().side();
    List<Result> flexors =
        visit.grades(side).filter(grade -> FLEXORS.contains(grade.key().result().value())).toList();
    long pip =
        flexors.stream()
            .filter(grade -> grade.key().result().value().equals("pip-flexion-grade"))
            .count();
    boolean allFive =
        flexors.stream().allMatch(grade -> Visit.code(grade).orElseThrow().equals("5"));
    if (pip < LEAST_PIP_GRADES || !allFive) {
      return;
    }
    ArrayList<ResultKey> results = new ArrayList<>(List.of(band.key()));
    flexors.forEach(grade -> results.add(grade.key()));
    Message words = Message.of(Visit.GRIP, "choice." + Visit.code(band).orElseThrow());
    Result z = visit.result(band.key(), "z-power").orElseThrow();
    BigDecimal shown = z.quantity().orElseThrow().amount().setScale(1, RoundingMode.HALF_UP);
    Message text =
        Message.of(ID, "grip-low", words, flexors.size(), shown, z.why().status(), Visit.PRACTICE);
    to.add(new Finding(ID, text, side, List.of(), results));
  }
}
