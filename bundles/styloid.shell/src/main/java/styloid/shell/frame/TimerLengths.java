package styloid.shell.frame;

import java.util.List;
import java.util.prefs.BackingStoreException;
import java.util.prefs.Preferences;
import styloid.spi.Timer;

/** How long holds and rests last on this machine, where the user set another length. */
public interface TimerLengths {

  /** Seconds a timer lasts: those set for its kind, else its usual length. */
  int seconds(Timer timer);

  /** Sets the length of all timers of a kind. */
  void set(Timer.Kind kind, int seconds);

  /** Lengths offered, in seconds: holds of 1 to 10, rests from the 15 of the shorter protocol. */
  static List<Integer> offered(Timer.Kind kind) {
    return kind == Timer.Kind.HOLD
        ? List.of(1, 2, 3, 4, 5, 6, 8, 10)
        : List.of(15, 30, 45, 60, 90, 120, 180);
  }

  /** Kept in the user's preferences. */
  static TimerLengths ofUser() {
    return of(Preferences.userRoot().node("styloid/timers"));
  }

  /** Kept in a node of preferences; what stands there and is no length counts as unset. */
  static TimerLengths of(Preferences node) {
    return new TimerLengths() {
      @Override
      public int seconds(Timer timer) {
        int set = node.getInt(timer.kind().code(), timer.seconds());
        return set < Timer.SHORTEST || set > Timer.LONGEST ? timer.seconds() : set;
      }

      @Override
      public void set(Timer.Kind kind, int seconds) {
        node.putInt(kind.code(), seconds);
        try {
          node.flush();
        } catch (BackingStoreException e) {
          System.getLogger(TimerLengths.class.getName())
              .log(System.Logger.Level.WARNING, "the length is not remembered", e);
        }
      }
    };
  }
}
