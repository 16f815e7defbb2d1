package styloid.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.osgi.service.component.annotations.Component;
import styloid.model.Finding;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.Message;
import styloid.model.PatientContext;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.ResultId;
import styloid.model.ResultKey;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.model.Unit;
import styloid.spi.FindingRule;
import styloid.spi.Labels;

/**
 * Gathers, per limb, the motions an active lag limits, those a joint limits, and those limited by
 * both, as goniometry judged them. See docs/rules/finding-limit.md.
 */
@Component(service = FindingRule.class)
public final class JointLimit implements FindingRule {
  static final String ID = "finding-limit";
  private static final String LIMIT = "-limit";

  /** Passive motion alone is short; what lag there is lies within the error and is not named. */
  private static final String RESTRICTION = "joint-restriction";

  private static final List<String> KINDS =
      List.of("active-lag", RESTRICTION, "lag-and-restriction");

  @Override
  public String id() {
    return ID;
  }

  @Override
  public Set<TestId> reads() {
    return Set.of(Visit.GONIOMETRY);
  }

  @Override
  public Labels labels() {
    return Labels.beside(JointLimit.class);
  }

  @Override
  public List<Finding> findings(PatientContext context) {
    ArrayList<Finding> findings = new ArrayList<>();
    for (Side side : Visit.LIMBS) {
      for (String kind : KINDS) {
        List<Result> limited =
            context.results().of(Visit.GONIOMETRY).stream()
                .filter(result -> result.key().side() == side)
                .filter(result -> result.key().result().value().endsWith(LIMIT))
                .filter(result -> Visit.code(result).filter(kind::equals).isPresent())
                .toList();
        if (!limited.isEmpty()) {
          findings.add(finding(new Visit(context), side, kind, limited));
        }
      }
    }
    return findings;
  }

  private static Finding finding(Visit visit, Side side, String kind, List<Result> limited) {
    ArrayList<Message> named = new ArrayList<>();
    ArrayList<ItemKey> entries = new ArrayList<>();
    ArrayList<ResultKey> results = new ArrayList<>();
    for (Result result : limited) {
      ResultKey key = result.key();
      String id = key.result().value();
      String motion = id.substring(0, id.length() - LIMIT.length());
      ResultKey lag = new ResultKey(key.test(), new ResultId(motion + "-lag"), side, key.digit());
      ItemKey passive = item(key, motion + "-passive");
      Message name = Visit.named(ID, passive);
      named.add(
          visit
              .quantity(lag)
              .filter(q -> !kind.equals(RESTRICTION))
              .map(q -> Message.of(ID, "limit.motion", name, q))
              .orElse(name));
      entries.add(item(key, motion + "-active"));
      entries.add(passive);
      results.add(key);
    }
    Quantity error = new Quantity(visit.error(), Unit.DEGREE);
    Message text = Message.of(ID, "limit." + kind, Visit.list(ID, named), error, Visit.PRACTICE);
    return new Finding(ID, text, side, entries, results);
  }

  private static ItemKey item(ResultKey at, String item) {
    return new ItemKey(at.test(), new ItemId(item), at.side(), at.digit(), 1);
  }
}
