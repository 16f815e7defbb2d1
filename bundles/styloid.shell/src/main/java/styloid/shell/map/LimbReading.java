package styloid.shell.map;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import styloid.model.Absence;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.ItemKey;
import styloid.model.LimbPart;
import styloid.model.PatientContext;
import styloid.model.Precaution;
import styloid.model.Result;
import styloid.model.Results;
import styloid.model.Side;
import styloid.plan.PutForward;
import styloid.plan.StepId;
import styloid.session.OpenEvaluation;
import styloid.spi.Withheld;

/** An open evaluation read part by part, as one moment shows it. */
final class LimbReading {
  private final OpenEvaluation open;
  private final LimbIndex index;
  private final PutForward putForward;
  private final Set<SidedPart> notable;
  private final Map<SidedPart, PartState> states = new HashMap<>();

  private LimbReading(
      OpenEvaluation open, LimbIndex index, PutForward putForward, Set<SidedPart> notable) {
    this.open = open;
    this.index = index;
    this.putForward = putForward;
    this.notable = notable;
    SidedPart.all().forEach(part -> states.put(part, count(index.slots(part), part)));
  }

  static LimbReading of(OpenEvaluation open) {
    LimbIndex index = LimbIndex.of(open.tests());
    Results results = open.context().results();
    return new LimbReading(open, index, PutForward.of(open.tests(), results), notable(open, index));
  }

  /** A later moment; what has not changed is not read again. */
  LimbReading next(OpenEvaluation newer) {
    if (newer.tests() != open.tests() && !newer.tests().equals(open.tests())) {
      return of(newer);
    }
    Results results = newer.context().results();
    boolean same = results == open.context().results();
    boolean sameFindings = newer.findings().equals(open.findings());
    return new LimbReading(
        newer,
        index,
        same ? putForward : PutForward.of(newer.tests(), results),
        same && sameFindings ? notable : notable(newer, index));
  }

  private static Set<SidedPart> notable(OpenEvaluation open, LimbIndex index) {
    HashSet<SidedPart> found = new HashSet<>();
    for (Result result : open.context().results().all()) {
      if (Notable.is(result, index.definition(result.key()))) {
        found.addAll(index.sidedPartsOf(result.key()));
      }
    }
    open.findings().forEach(finding -> found.addAll(index.sidedPartsOf(finding)));
    return found;
  }

  OpenEvaluation open() {
    return open;
  }

  LimbIndex index() {
    return index;
  }

  PartState state(SidedPart part) {
    return states.get(part);
  }

  /** How far the slots have come, which are all about one part. */
  PartState count(List<Slot> slots, SidedPart part) {
    PatientContext context = open.context();
    boolean odd = notable.contains(part);
    int done = 0;
    int left = 0;
    int withheld = 0;
    for (Slot slot : slots) {
      for (ItemKey key : slot.keys()) {
        Optional<Entry> entry = context.snapshot().entry(key);
        if (entry.isPresent()) {
          boolean forbidden = entry.get().value().filter(LimbReading::isPrecaution).isPresent();
          odd |= Notable.is(entry.get());
          done += forbidden ? 0 : 1;
          withheld += forbidden ? 1 : 0;
        } else if (mustBeDone(slot, key)) {
          boolean forbidden = !withheldBy(slot, key).isEmpty();
          left += forbidden ? 0 : 1;
          withheld += forbidden ? 1 : 0;
        }
      }
    }
    boolean limited = withheld > 0 || context.precautions().stream().anyMatch(p -> on(p, part));
    return new PartState(done, left, withheld, limited, odd);
  }

  private static boolean isPrecaution(Object value) {
    return value instanceof Absence absence && absence.reason() == Absence.Reason.PRECAUTION;
  }

  private boolean mustBeDone(Slot slot, ItemKey key) {
    return !slot.item().optional()
        && isPutForward(slot, key.side())
        && slot.item().askWhen().holds(open.context().snapshot(), key);
  }

  /** Whether the step is part of this evaluation, as far as the tests before it say. */
  boolean isPutForward(Slot slot, Side side) {
    return putForward.test(new StepId(slot.test().id(), slot.group().id(), side, false));
  }

  /** Whether the place is still to be filled. */
  boolean isOpen(Slot slot, ItemKey key) {
    return open.context().snapshot().entry(key).isEmpty()
        && mustBeDone(slot, key)
        && withheldBy(slot, key).isEmpty();
  }

  private List<Precaution> withheldBy(Slot slot, ItemKey key) {
    PatientContext context = open.context();
    return context.precautions().isEmpty()
        ? List.of()
        : Withheld.by(
            slot.group(), slot.item(), key, context.precautions(), context.evaluation().date());
  }

  /** Precautions in force on the part itself, then those that withhold something of it. */
  Set<Precaution> limits(SidedPart part) {
    LinkedHashSet<Precaution> limits = new LinkedHashSet<>();
    open.context().precautions().stream().filter(p -> on(p, part)).forEach(limits::add);
    for (Slot slot : index.slots(part)) {
      slot.keys().forEach(key -> limits.addAll(withheldBy(slot, key)));
    }
    return limits;
  }

  private boolean on(Precaution precaution, SidedPart at) {
    LimbPart part = at.part();
    boolean sameSide = precaution.side() == Side.UNSIDED || precaution.side() == at.side();
    boolean sameDigit =
        precaution.digit() == Digit.NONE
            || part.digit() == Digit.NONE
            || precaution.digit() == part.digit();
    return sameSide
        && sameDigit
        && precaution.region().covers(part.region())
        && precaution.inForceOn(open.context().evaluation().date());
  }
}
