package styloid.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.osgi.service.component.annotations.Component;
import styloid.model.Entry;
import styloid.model.Finding;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.Message;
import styloid.model.PatientContext;
import styloid.model.ResultId;
import styloid.model.ResultKey;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.spi.FindingRule;
import styloid.spi.Labels;

/**
 * Motions the screen calls painful, not dropped by the therapist, without any entry in goniometry,
 * once goniometry of that limb has begun. An absence counts as an entry: the reason is known. See
 * docs/rules/finding-pain-not-measured.md.
 */
@Component(service = FindingRule.class)
public final class PainNotMeasured implements FindingRule {
  static final String ID = "finding-pain-not-measured";
  private static final String PAIN = "-pain";

  /** Motions of the screen that goniometry measures. */
  private static final Set<String> MEASURED =
      Set.of(
          "shoulder-flexion",
          "shoulder-extension",
          "shoulder-abduction",
          "shoulder-adduction",
          "shoulder-horizontal-abduction",
          "shoulder-horizontal-adduction",
          "shoulder-internal-rotation",
          "shoulder-external-rotation",
          "elbow-flexion",
          "elbow-extension",
          "forearm-pronation",
          "forearm-supination",
          "wrist-flexion",
          "wrist-extension",
          "wrist-radial-deviation",
          "wrist-ulnar-deviation",
          "mp-flexion",
          "mp-extension",
          "pip-flexion",
          "pip-extension",
          "dip-flexion",
          "dip-extension",
          "thumb-palmar-abduction",
          "thumb-radial-abduction",
          "thumb-mp-flexion",
          "thumb-mp-extension",
          "thumb-ip-flexion",
          "thumb-ip-extension");

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
    return Labels.beside(PainNotMeasured.class);
  }

  @Override
  public List<Finding> findings(PatientContext context) {
    ArrayList<Finding> findings = new ArrayList<>();
    for (Side side : Visit.LIMBS) {
      if (begun(context, side)) {
        finding(new Visit(context), side, findings);
      }
    }
    return findings;
  }

  private static boolean begun(PatientContext context, Side side) {
    return context.snapshot().entries().stream()
        .map(Entry::key)
        .anyMatch(key -> key.test().equals(Visit.GONIOMETRY) && key.side() == side);
  }

  private static void finding(Visit visit, Side side, List<Finding> to) {
    ArrayList<Message> named = new ArrayList<>();
    ArrayList<ItemKey> entries = new ArrayList<>();
    ArrayList<ResultKey> results = new ArrayList<>();
    for (ItemKey pain : visit.screened(side, "yes")) {
      String item = pain.item().value();
      String motion = item.endsWith(PAIN) ? item.substring(0, item.length() - PAIN.length()) : "";
      if (MEASURED.contains(motion) && open(visit, pain, motion)) {
        named.add(Visit.named(ID, pain.sibling(new ItemId(motion))));
        entries.add(pain);
        results.add(next(pain, motion));
      }
    }
    if (!named.isEmpty()) {
      Message text = Message.of(ID, "pain-not-measured", Visit.list(ID, named), Visit.PRACTICE);
      to.add(new Finding(ID, text, side, entries, results));
    }
  }

  private static boolean open(Visit visit, ItemKey pain, String motion) {
    boolean dropped =
        visit
            .context()
            .results()
            .result(next(pain, motion))
            .flatMap(Visit::code)
            .filter("dropped"::equals)
            .isPresent();
    return !dropped && visit.measured(motion, pain.side()).findAny().isEmpty();
  }

  private static ResultKey next(ItemKey pain, String motion) {
    return new ResultKey(pain.test(), new ResultId(motion + "-next"), pain.side(), pain.digit());
  }
}
