package styloid.shell.map;

import java.util.Collection;
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
import styloid.model.Side;
import styloid.model.Snapshot;
import styloid.plan.PutForward;
import styloid.plan.StepId;
import styloid.session.OpenEvaluation;
import styloid.spi.Group;
import styloid.spi.TestDefinition;
import styloid.spi.Withheld;

/** An open evaluation read part by part, as one moment shows it. */
final class LimbReading {
  private final OpenEvaluation open;
  private final LimbIndex index;
  private final Set<StepId> leftOut;
  private final Set<SidedPart> notable;
  private final Map<SidedPart, Set<Precaution>> limits;
  private final Map<SidedPart, PartState> states = new HashMap<>();

  private LimbReading(
      OpenEvaluation open,
      LimbIndex index,
      Set<StepId> leftOut,
      Set<SidedPart> notable,
      Map<SidedPart, Set<Precaution>> limits) {
    this.open = open;
    this.index = index;
    this.leftOut = leftOut;
    this.notable = notable;
    this.limits = limits;
  }

  static LimbReading of(OpenEvaluation open) {
    LimbIndex index = LimbIndex.of(open.tests());
    LimbReading first =
        new LimbReading(open, index, leftOut(open), notable(open, index), limits(open, index));
    first.count(SidedPart.all());
    return first;
  }

  /** A later moment; what cannot have changed is not read again. */
  LimbReading next(OpenEvaluation newer) {
    if (newer.tests() != open.tests() && !newer.tests().equals(open.tests())) {
      return of(newer);
    }
    boolean sameResults = newer.context().results() == open.context().results();
    boolean sameFindings = newer.findings().equals(open.findings());
    LimbReading next =
        new LimbReading(
            newer,
            index,
            sameResults ? leftOut : leftOut(newer),
            sameResults && sameFindings ? notable : notable(newer, index),
            sameLimits(newer) ? limits : limits(newer, index));
    boolean sameRules =
        next.leftOut.equals(leftOut)
            && next.limits == limits
            && newer.context().evaluation().choices().equals(open.context().evaluation().choices());
    if (sameRules) {
      next.states.putAll(states);
      next.count(changed(next));
    } else {
      next.count(SidedPart.all());
    }
    return next;
  }

  /** Parts of which an entry, a result or a finding has changed since. */
  private Set<SidedPart> changed(LimbReading next) {
    HashSet<SidedPart> changed = new HashSet<>();
    SidedPart.all().stream()
        .filter(part -> notable.contains(part) != next.notable.contains(part))
        .forEach(changed::add);
    Snapshot before = open.context().snapshot();
    Snapshot after = next.open.context().snapshot();
    if (before != after) {
      differing(before, after).forEach(key -> changed.addAll(index.touchedBy(key)));
    }
    return changed;
  }

  private static Set<ItemKey> differing(Snapshot before, Snapshot after) {
    HashSet<ItemKey> keys = new HashSet<>();
    for (Entry entry : after.entries()) {
      if (before.entry(entry.key()).filter(was -> was == entry).isEmpty()) {
        keys.add(entry.key());
      }
    }
    for (Entry entry : before.entries()) {
      if (after.entry(entry.key()).isEmpty()) {
        keys.add(entry.key());
      }
    }
    return keys;
  }

  private void count(Collection<SidedPart> parts) {
    parts.forEach(part -> states.put(part, count(index.slots(part), part)));
  }

  /** Steps that are no part of this evaluation, as far as the tests before them say. */
  private static Set<StepId> leftOut(OpenEvaluation open) {
    PutForward putForward = PutForward.of(open.tests(), open.context().results());
    HashSet<StepId> out = new HashSet<>();
    for (TestDefinition test : open.tests()) {
      for (Group group : test.groups()) {
        for (Side side : group.sides()) {
          StepId step = new StepId(test.id(), group.id(), side, false);
          if (!putForward.test(step)) {
            out.add(step);
          }
        }
      }
    }
    return out;
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

  private boolean sameLimits(OpenEvaluation newer) {
    PatientContext before = open.context();
    PatientContext now = newer.context();
    return before.precautions().equals(now.precautions())
        && before.evaluation().date().equals(now.evaluation().date());
  }

  /** Precautions in force that name the part, then those that withhold something of it. */
  private static Map<SidedPart, Set<Precaution>> limits(OpenEvaluation open, LimbIndex index) {
    HashMap<SidedPart, Set<Precaution>> all = new HashMap<>();
    for (SidedPart part : SidedPart.all()) {
      LinkedHashSet<Precaution> own = new LinkedHashSet<>();
      open.context().precautions().stream().filter(p -> names(p, part, open)).forEach(own::add);
      for (Slot slot : index.slots(part)) {
        slot.keys().forEach(key -> own.addAll(withheldBy(open.context(), slot, key)));
      }
      all.put(part, own);
    }
    return all;
  }

  private static boolean names(Precaution precaution, SidedPart at, OpenEvaluation open) {
    LimbPart part = at.part();
    boolean sameSide = precaution.side() == Side.UNSIDED || precaution.side() == at.side();
    boolean sameDigit = precaution.digit() == Digit.NONE || precaution.digit() == part.digit();
    return sameSide
        && sameDigit
        && precaution.region() == part.region()
        && precaution.inForceOn(open.context().evaluation().date());
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
    return new PartState(done, left, withheld, !limits.get(part).isEmpty(), odd);
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
    return leftOut.isEmpty()
        || !leftOut.contains(new StepId(slot.test().id(), slot.group().id(), side, false));
  }

  /** Whether the place is still to be filled. */
  boolean isOpen(Slot slot, ItemKey key) {
    return open.context().snapshot().entry(key).isEmpty()
        && mustBeDone(slot, key)
        && withheldBy(slot, key).isEmpty();
  }

  private List<Precaution> withheldBy(Slot slot, ItemKey key) {
    return withheldBy(open.context(), slot, key);
  }

  private static List<Precaution> withheldBy(PatientContext context, Slot slot, ItemKey key) {
    return context.precautions().isEmpty()
        ? List.of()
        : Withheld.by(
            slot.group(), slot.item(), key, context.precautions(), context.evaluation().date());
  }

  /** Precautions that reach the part. */
  Set<Precaution> limits(SidedPart part) {
    return limits.get(part);
  }
}
