package styloid.shell.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import styloid.model.Capacity;
import styloid.model.Therapist;
import styloid.model.TherapistId;

class TherapistsTest {
  private static final Therapist LICENSED =
      new Therapist(
          new TherapistId("A. L."),
          Optional.of("Ada Licensed"),
          Optional.of(Capacity.LICENSED_THERAPIST));
  private static final Therapist LEARNER =
      new Therapist(
          new TherapistId("L. L."), Optional.empty(), Optional.of(Capacity.LEARNER_OR_ASSISTANT));

  private final Map<String, String> kept = new TreeMap<>();

  @Test
  void whoWorkedIsRememberedAsWhatTheySaidLatestFirst() {
    Therapists.of(new MemoryNode(kept)).used(LICENSED);
    Therapists.of(new MemoryNode(kept)).used(LEARNER);
    assertEquals(List.of(LEARNER, LICENSED), Therapists.of(new MemoryNode(kept)).known());
  }

  @Test
  void whoComesAgainStandsOnceAndSayingNothingKeepsWhatWasSaid() {
    Therapist again = Therapist.unsaid(LICENSED.id());
    assertEquals(List.of(LICENSED, LEARNER), Therapists.first(again, List.of(LEARNER, LICENSED)));
  }

  @Test
  void notMoreAreRememberedThanCanBeOffered() {
    List<Therapist> many =
        IntStream.range(0, 9).mapToObj(i -> Therapist.unsaid(new TherapistId("T" + i))).toList();
    assertEquals(Therapists.MOST, Therapists.first(LICENSED, many).size());
  }

  @Test
  void namesKeptBeforeCapacityWasAskedAndWordsUnknownAreNotLicensed() {
    kept.put("0", "Old Name");
    kept.put("1", "Odd Word");
    kept.put("1.capacity", "chief");
    List<Therapist> known = Therapists.of(new MemoryNode(kept)).known();
    assertEquals(2, known.size());
    known.forEach(who -> assertFalse(who.licensed(), who::toString));
  }
}
