package styloid.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.osgi.service.component.annotations.Component;
import styloid.model.Finding;
import styloid.model.ItemKey;
import styloid.model.Message;
import styloid.model.PatientContext;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.spi.FindingRule;
import styloid.spi.Labels;

/**
 * The screen calls a motion unable, and its grade, typed or derived, is 4 minus or better. See
 * docs/rules/finding-graded-but-unable.md.
 */
@Component(service = FindingRule.class)
public final class GradedButUnable implements FindingRule {
  static final String ID = "finding-graded-but-unable";

  @Override
  public String id() {
    return ID;
  }

  @Override
  public Set<TestId> reads() {
    return Set.of(Visit.SCREEN, Visit.GRADING);
  }

  @Override
  public Labels labels() {
    return Labels.beside(GradedButUnable.class);
  }

  @Override
  public List<Finding> findings(PatientContext context) {
    Visit visit = new Visit(context);
    ArrayList<Finding> findings = new ArrayList<>();
    for (Side side : Visit.LIMBS) {
      for (ItemKey screened : visit.screened(side, "unable")) {
        visit
            .grades(side)
            .filter(grade -> Visit.about(screened.item().value(), grade.key().result().value()))
            .filter(grade -> Visit.strong(Visit.code(grade).orElseThrow()))
            .forEach(
                grade ->
                    findings.add(
                        new Finding(
                            ID,
                            Message.of(
                                ID,
                                "graded-but-unable",
                                Visit.named(ID, screened),
                                Visit.named(ID, grade.key()),
                                Visit.code(grade).orElseThrow(),
                                Visit.PRACTICE),
                            side,
                            List.of(screened),
                            List.of(grade.key()))));
      }
    }
    return findings;
  }
}
