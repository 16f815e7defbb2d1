package styloid.shell.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.prefs.BackingStoreException;
import java.util.prefs.Preferences;

/** The names evaluations were begun under on this machine, latest first. */
public interface Therapists {
  int MOST = 8;

  List<String> names();

  /** Puts a name to the front. */
  void used(String name);

  /** Kept in the user's preferences. */
  static Therapists ofUser() {
    return new Therapists() {
      private final Preferences node = Preferences.userRoot().node("styloid/therapists");

      @Override
      public List<String> names() {
        ArrayList<String> names = new ArrayList<>();
        for (int place = 0; place < MOST; place++) {
          String name = node.get(Integer.toString(place), "");
          if (!name.isBlank()) {
            names.add(name);
          }
        }
        return names;
      }

      @Override
      public void used(String name) {
        List<String> names = first(name, names());
        for (int place = 0; place < names.size(); place++) {
          node.put(Integer.toString(place), names.get(place));
        }
        try {
          node.flush();
        } catch (BackingStoreException e) {
          System.getLogger(Therapists.class.getName())
              .log(System.Logger.Level.WARNING, "names are not remembered", e);
        }
      }
    };
  }

  /** The list with this name first, each name once, at most {@link #MOST}. */
  static List<String> first(String name, List<String> names) {
    ArrayList<String> all = new ArrayList<>(List.of(name));
    names.stream().filter(n -> !n.equals(name)).limit(MOST - 1).forEach(all::add);
    return all;
  }
}
