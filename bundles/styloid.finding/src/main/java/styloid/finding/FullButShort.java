package styloid.finding;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.osgi.service.component.annotations.Component;
import styloid.model.Entry;
import styloid.model.Finding;
import styloid.model.ItemKey;
import styloid.model.Message;
import styloid.model.PatientContext;
import styloid.model.Quantity;
import styloid.model.ResultId;
import styloid.model.ResultKey;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.model.Unit;
import styloid.spi.FindingRule;
import styloid.spi.Labels;

/**
 * The screen calls a motion full, and goniometry shows its active range short by more than the
 * measurement error: of passive motion, or of an uninvolved other side. Norms are not used here,
 * for a person may be full and short of a norm. See docs/rules/finding-full-but-short.md.
 */
@Component(service = FindingRule.class)
public final class FullButShort implements FindingRule {
  static final String ID = "finding-full-but-short";
  private static final String ACTIVE = "-active";

  @Override
  public String id() {
    return ID;
  }

  @Override
  public Set<TestId> reads() {
    return Set.of(Visit.SCREEN, Visit.GONIOMETRY);
  }

  @Override
  public Labels labels() {
    return Labels.beside(FullButShort.class);
  }

  @Override
  public List<Finding> findings(PatientContext context) {
    Visit visit = new Visit(context);
    ArrayList<Finding> findings = new ArrayList<>();
    for (Side side : Visit.LIMBS) {
      for (ItemKey screened : visit.screened(side, "full")) {
        String active = screened.item().value() + ACTIVE;
        visit
            .measured(screened.item().value(), side)
            .map(Entry::key)
            .filter(key -> key.item().value().equals(active))
            .forEach(key -> shortfall(visit, screened, key).ifPresent(findings::add));
      }
    }
    return findings;
  }

  private static Optional<Finding> shortfall(Visit visit, ItemKey screened, ItemKey measured) {
    String motion = screened.item().value();
    boolean otherSideServes =
        !visit.context().patient().involved().contains(measured.side().opposite());
    Optional<Finding> lag = finding(visit, screened, measured, motion + "-lag", "passive");
    return lag.isPresent() || !otherSideServes
        ? lag
        : finding(visit, screened, measured, motion + ACTIVE + "-side-deficit", "side");
  }

  private static Optional<Finding> finding(
      Visit visit, ItemKey screened, ItemKey measured, String result, String against) {
    BigDecimal error = visit.error();
    return visit
        .quantity(measured, result)
        .filter(deficit -> deficit.amount().compareTo(error) > 0)
        .map(
            deficit ->
                new Finding(
                    ID,
                    Message.of(
                        ID,
                        "full-but-short." + against,
                        Visit.named(ID, measured),
                        deficit,
                        new Quantity(error, Unit.DEGREE),
                        Visit.PRACTICE),
                    measured.side(),
                    List.of(screened, measured),
                    List.of(
                        new ResultKey(
                            measured.test(),
                            new ResultId(result),
                            measured.side(),
                            measured.digit()))));
  }
}
