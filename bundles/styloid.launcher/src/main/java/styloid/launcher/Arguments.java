package styloid.launcher;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What was asked for on the command line. The launcher's own options may stand anywhere before
 * {@code --}; all other words are those of a command.
 *
 * @param words the command with its words; empty when the window is wanted
 */
record Arguments(Optional<Path> data, boolean demo, List<String> words) {
  static final String OPEN = "open";

  Arguments {
    words = List.copyOf(words);
  }

  boolean window() {
    return words.isEmpty();
  }

  static Arguments parse(Words messages, String... args) throws StartException {
    Optional<Path> data = Optional.empty();
    boolean demo = false;
    ArrayList<String> words = new ArrayList<>();
    for (int i = 0; i < args.length; i++) {
      String arg = args[i];
      if (arg.equals("--")) {
        words.addAll(List.of(args).subList(i, args.length));
        break;
      } else if (arg.equals("--demo")) {
        demo = true;
      } else if (arg.equals("--data")) {
        i++;
        data = Optional.of(folder(messages, i < args.length ? args[i] : ""));
      } else if (arg.startsWith("--data=")) {
        data = Optional.of(folder(messages, arg.substring("--data=".length())));
      } else {
        words.add(arg);
      }
    }
    if (!words.isEmpty() && words.get(0).equals(OPEN)) {
      words.remove(0);
      if (!words.isEmpty()) {
        throw new StartException(ExitCode.USAGE, messages.text("usage.open", words.get(0)), null);
      }
    }
    return new Arguments(data, demo, words);
  }

  private static Path folder(Words messages, String text) throws StartException {
    if (text.isBlank()) {
      throw new StartException(ExitCode.USAGE, messages.text("usage.data"), null);
    }
    try {
      return Path.of(text);
    } catch (InvalidPathException e) {
      throw new StartException(
          ExitCode.USAGE, messages.text("usage.data-path", text, e.getReason()), null);
    }
  }
}
