package styloid.finding;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
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
 * measurement error: of passive motion, or of an uninvolved other side by more than the error of
 * two readings. Norms are not used here, for a person may be full and short of a norm. See
 * docs/rules/finding-full-but-short.md.
 */
@Component(service = FindingRule.class)
public final class FullButShort implements FindingRule {
  static final String ID = "finding-full-but-short";
  private static final String ACTIVE = "-active";
  private static final BigDecimal ROOT_TWO = BigDecimal.valueOf(2).sqrt(MathContext.DECIMAL64);

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
      List<Shortfall> ofPassive = new ArrayList<>();
      List<Shortfall> ofOtherSide = new ArrayList<>();
      for (ItemKey screened : visit.screened(side, "full")) {
        String active = screened.item().value() + ACTIVE;
        visit
            .measured(screened.item().value(), side)
            .map(Entry::key)
            .filter(key -> key.item().value().equals(active))
            .forEach(key -> add(visit, screened, key, ofPassive, ofOtherSide));
      }
      finding(side, "passive", ofPassive, visit.error(), findings);
      finding(side, "side", ofOtherSide, errorOfTwo(visit), findings);
    }
    return findings;
  }

  /** A motion that stops short. */
  private record Shortfall(ItemKey screened, ItemKey measured, ResultKey result, Quantity by) {}

  private static void add(
      Visit visit,
      ItemKey screened,
      ItemKey measured,
      List<Shortfall> ofPassive,
      List<Shortfall> ofOtherSide) {
    String motion = screened.item().value();
    Optional<Shortfall> lag = shortfall(visit, screened, measured, motion + "-lag", visit.error());
    lag.ifPresent(ofPassive::add);
    boolean otherSideServes =
        !visit.context().patient().involved().contains(measured.side().opposite());
    if (lag.isEmpty() && otherSideServes) {
      shortfall(visit, screened, measured, motion + ACTIVE + "-side-deficit", errorOfTwo(visit))
          .ifPresent(ofOtherSide::add);
    }
  }

  /** Two limbs are two readings, each with its error. */
  private static BigDecimal errorOfTwo(Visit visit) {
    return visit.error().multiply(ROOT_TWO).setScale(1, RoundingMode.HALF_UP);
  }

  private static Optional<Shortfall> shortfall(
      Visit visit, ItemKey screened, ItemKey measured, String result, BigDecimal error) {
    ResultKey key =
        new ResultKey(measured.test(), new ResultId(result), measured.side(), measured.digit());
    return visit
        .quantity(key)
        .filter(deficit -> deficit.amount().compareTo(error) > 0)
        .map(deficit -> new Shortfall(screened, measured, key, deficit));
  }

  private static void finding(
      Side side, String against, List<Shortfall> all, BigDecimal error, List<Finding> to) {
    if (all.isEmpty()) {
      return;
    }
    ArrayList<Message> named = new ArrayList<>();
    LinkedHashSet<ItemKey> entries = new LinkedHashSet<>();
    for (Shortfall one : all) {
      Message motion = Message.of(one.screened.test(), "item." + one.screened.item());
      Message name = Visit.ofDigit(ID, motion, one.measured.digit());
      named.add(Message.of(ID, "full-but-short.motion", name, one.by));
      entries.add(one.screened);
      entries.add(one.measured);
    }
    Message text =
        Message.of(
            ID,
            "full-but-short." + against,
            Visit.list(ID, named),
            new Quantity(error, Unit.DEGREE),
            Visit.PRACTICE);
    to.add(
        new Finding(
            ID, text, side, List.copyOf(entries), all.stream().map(Shortfall::result).toList()));
  }
}
