package styloid.shell.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.prefs.BackingStoreException;
import java.util.prefs.Preferences;
import styloid.model.Capacity;
import styloid.model.Codes;
import styloid.model.Therapist;
import styloid.model.TherapistId;

/** Who has worked on this machine, latest first, as what they last said they work. */
public interface Therapists {
  int MOST = 8;

  List<Therapist> known();

  /** Puts somebody to the front. */
  void used(Therapist who);

  /** Kept in the user's preferences. */
  static Therapists ofUser() {
    return of(Preferences.userRoot().node("styloid/therapists"));
  }

  static Therapists of(Preferences node) {
    return new Therapists() {
      @Override
      public List<Therapist> known() {
        ArrayList<Therapist> known = new ArrayList<>();
        for (int place = 0; place < MOST; place++) {
          String id = node.get(Integer.toString(place), "");
          if (!id.isBlank()) {
            known.add(
                new Therapist(
                    new TherapistId(id),
                    Optional.of(node.get(place + ".name", "")).filter(n -> !n.isBlank()),
                    capacity(node.get(place + ".capacity", ""))));
          }
        }
        return known;
      }

      @Override
      public void used(Therapist who) {
        List<Therapist> all = first(who, known());
        for (int place = 0; place < all.size(); place++) {
          Therapist one = all.get(place);
          node.put(Integer.toString(place), one.id().value());
          node.put(place + ".name", one.name().orElse(""));
          node.put(place + ".capacity", one.capacity().map(Capacity::code).orElse(""));
        }
        try {
          node.flush();
        } catch (BackingStoreException e) {
          System.getLogger(Therapists.class.getName())
              .log(System.Logger.Level.WARNING, "who worked is not remembered", e);
        }
      }
    };
  }

  /** Empty for a word that is none of the codes: whoever it was has to say again. */
  private static Optional<Capacity> capacity(String code) {
    for (Capacity capacity : Capacity.values()) {
      if (Codes.of(capacity).equals(code)) {
        return Optional.of(capacity);
      }
    }
    return Optional.empty();
  }

  /**
   * The list with this one first, each id once, at most {@link #MOST}. Who says nothing of name or
   * capacity is remembered with what they said before.
   */
  static List<Therapist> first(Therapist who, List<Therapist> known) {
    Optional<Therapist> before = known.stream().filter(t -> t.id().equals(who.id())).findFirst();
    ArrayList<Therapist> all = new ArrayList<>();
    all.add(
        new Therapist(
            who.id(),
            who.name().or(() -> before.flatMap(Therapist::name)),
            who.capacity().or(() -> before.flatMap(Therapist::capacity))));
    known.stream().filter(t -> !t.id().equals(who.id())).limit(MOST - 1).forEach(all::add);
    return all;
  }
}
