package styloid.shell;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import styloid.form.Palette;
import styloid.shell.look.Display;

/**
 * Opens the window on invented patients. With a folder as argument, writes a picture of each screen
 * instead. Further words say how: {@code 1920x1080}, {@code dark}, {@code touch}, {@code dense},
 * {@code 200} for the size in percent, {@code twice} for twice the pixels.
 */
final class ShellDemo {
  private static EveryScreen screens;
  private static int pictures;

  private ShellDemo() {}

  public static void main(String[] args) throws Exception {
    List<String> how = args.length > 1 ? List.of(args).subList(1, args.length) : List.of();
    String size = how.stream().filter(w -> w.matches("\\d+x\\d+")).findFirst().orElse("1366x768");
    System.setProperty("headless.geometry", size);
    double width = Double.parseDouble(size.split("x")[0]);
    double height = Double.parseDouble(size.split("x")[1]);
    double factor = how.contains("twice") ? 2 : 1;
    screens = new EveryScreen(display(how), width, height, name -> picture(args[0], name, factor));
    if (args.length > 0) {
      screens.visit();
      System.exit(0);
    }
    Window.run(() -> screens.stage.setOnHidden(e -> System.exit(0)));
  }

  private static void picture(String folder, String name, double factor) {
    String file = String.format(Locale.ROOT, "%02d-%s.png", pictures++, name);
    Window.picture(screens.stage, Path.of(folder, file), factor);
  }

  private static Display display(List<String> how) {
    Display display = Display.USUAL;
    for (String word : how) {
      if (word.equals("dark")) {
        display = display.with(Palette.DARK);
      } else if (word.equals("touch") || word.equals("dense")) {
        display = display.with(Display.Density.valueOf(word.toUpperCase(Locale.ROOT)));
      } else if (word.matches("\\d+")) {
        display = display.withScale(Integer.parseInt(word));
      }
    }
    return display;
  }
}
