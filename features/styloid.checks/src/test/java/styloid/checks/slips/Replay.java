package styloid.checks.slips;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import styloid.model.Entry;
import styloid.model.PatientContext;
import styloid.model.Quantity;
import styloid.model.Snapshot;
import styloid.spi.EntryCheck;
import styloid.spi.slip.Doubt;
import styloid.spi.slip.Slip;
import styloid.spi.slip.Slips;

/** Types an evaluation field by field and notes where it is asked. Every question is kept. */
final class Replay {
  private Replay() {}

  /** Why a field stopped entry. */
  enum Stop {
    NONE,
    /** Outside what is possible or usual for the item. */
    RANGE,
    /** Suspected a slip. */
    SLIP
  }

  /** Where entry stopped, field by field, and what stood there at the end. */
  record Run(List<Stop> stops, List<Slip> suspected, Snapshot end) {
    Set<Integer> asked() {
      HashSet<Integer> at = new HashSet<>();
      for (int i = 0; i < stops.size(); i++) {
        if (stops.get(i) != Stop.NONE) {
          at.add(i);
        }
      }
      return at;
    }
  }

  /** As it was; {@code at} of -1 changes nothing. */
  static Run of(Corpus.Case made, int at, Quantity instead) {
    PatientContext context = made.before();
    ArrayList<Stop> stops = new ArrayList<>();
    ArrayList<Slip> suspected = new ArrayList<>();
    for (int i = 0; i < made.steps().size(); i++) {
      Corpus.Step step = made.steps().get(i);
      Quantity typed = i == at ? instead : step.typed();
      EntryCheck.Checked checked = EntryCheck.check(step.item(), typed);
      Stop stop = checked.accepted() ? Stop.NONE : Stop.RANGE;
      Optional<Doubt> doubt = Slips.look(step.group(), step.item(), step.key(), typed, context);
      if (stop == Stop.NONE && doubt.isPresent()) {
        stop = Stop.SLIP;
        suspected.add(doubt.get().slip());
      }
      stops.add(stop);
      Entry entry = Corpus.entry(step.key(), typed, stop != Stop.NONE);
      context = context.withSnapshot(context.snapshot().with(entry));
    }
    return new Run(stops, suspected, context.snapshot());
  }
}
