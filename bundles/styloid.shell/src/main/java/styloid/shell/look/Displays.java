package styloid.shell.look;

import java.util.Arrays;
import java.util.Optional;
import java.util.prefs.BackingStoreException;
import java.util.prefs.Preferences;
import javafx.scene.input.KeyCode;
import styloid.form.Palette;
import styloid.form.Pedals;

/** Remembers how a user wants to see the window, and whether the guide was offered. */
public interface Displays {
  Display now();

  void set(Display display);

  /** Whether the guided evaluation was offered before; the first question is answered no. */
  boolean guideOffered();

  /** Kept in the user's preferences. */
  static Displays ofUser() {
    return of(Preferences.userRoot().node("styloid/display"));
  }

  /** Kept in a node of preferences; what stands there and makes no sense counts as unset. */
  static Displays of(Preferences node) {
    return new Displays() {
      @Override
      public Display now() {
        int scale = node.getInt("scale", Display.USUAL.scale());
        return new Display(
            named(Palette.class, node.get("palette", ""), Display.USUAL.palette()),
            named(Display.Density.class, node.get("density", ""), Display.USUAL.density()),
            Display.SCALES.contains(scale) ? scale : Display.USUAL.scale(),
            Optional.of(node.get("language", "")).filter(l -> l.matches("[a-z]{2,3}")),
            new Pedals(pedal("pedal-next"), pedal("pedal-timer")));
      }

      private Optional<KeyCode> pedal(String key) {
        String name = node.get(key, "");
        return Pedals.OFFERED.stream().filter(code -> code.name().equals(name)).findFirst();
      }

      @Override
      public void set(Display display) {
        node.putInt("scale", display.scale());
        node.put("palette", display.palette().name());
        node.put("density", display.density().name());
        node.put("language", display.language().orElse(""));
        node.put("pedal-next", display.pedals().next().map(KeyCode::name).orElse(""));
        node.put("pedal-timer", display.pedals().timer().map(KeyCode::name).orElse(""));
        flush();
      }

      @Override
      public boolean guideOffered() {
        boolean before = node.getBoolean("guide-offered", false);
        if (!before) {
          node.putBoolean("guide-offered", true);
          flush();
        }
        return before;
      }

      private void flush() {
        try {
          node.flush();
        } catch (BackingStoreException e) {
          System.getLogger(Displays.class.getName())
              .log(System.Logger.Level.WARNING, "the display is not remembered", e);
        }
      }
    };
  }

  private static <T extends Enum<T>> T named(Class<T> type, String name, T otherwise) {
    return Arrays.stream(type.getEnumConstants())
        .filter(constant -> constant.name().equals(name))
        .findFirst()
        .orElse(otherwise);
  }
}
