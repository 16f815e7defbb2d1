package styloid.exchange;

import java.io.IOException;
import java.util.ArrayDeque;

/**
 * Writes JSON in a layout that is the same for the same content: two spaces a level, a line a
 * value, and small objects on one line where the caller says so. Line ends are {@code \n}.
 */
final class JsonWriter {
  private final Appendable out;
  private final ArrayDeque<Level> levels = new ArrayDeque<>();
  private boolean afterKey;

  /** An object or list being written. */
  private static final class Level {
    final char end;
    final boolean inline;
    boolean empty = true;

    Level(char end, boolean inline) {
      this.end = end;
      this.inline = inline;
    }
  }

  JsonWriter(Appendable out) {
    this.out = out;
  }

  /** Begins an object with a line for each key. */
  JsonWriter object() throws IOException {
    return open('{', '}', false);
  }

  /** Begins an object on one line, with all it holds. */
  JsonWriter inlineObject() throws IOException {
    return open('{', '}', true);
  }

  JsonWriter list() throws IOException {
    return open('[', ']', false);
  }

  JsonWriter inlineList() throws IOException {
    return open('[', ']', true);
  }

  private JsonWriter open(char begin, char end, boolean inline) throws IOException {
    boolean within = !levels.isEmpty() && levels.peek().inline;
    before();
    out.append(begin);
    levels.push(new Level(end, inline || within));
    return this;
  }

  /** Ends the innermost object or list; ends the file with a line end after the outermost. */
  JsonWriter end() throws IOException {
    Level level = levels.pop();
    if (!level.empty && !level.inline) {
      newLine();
    }
    out.append(level.end);
    if (levels.isEmpty()) {
      out.append('\n');
    }
    return this;
  }

  JsonWriter key(String key) throws IOException {
    before();
    quote(key);
    out.append(": ");
    afterKey = true;
    return this;
  }

  JsonWriter text(String text) throws IOException {
    before();
    quote(text);
    return this;
  }

  JsonWriter number(int number) throws IOException {
    return bare(Integer.toString(number));
  }

  JsonWriter number(double number) throws IOException {
    return bare(Double.toString(number));
  }

  JsonWriter truth(boolean value) throws IOException {
    return bare(Boolean.toString(value));
  }

  JsonWriter nothing() throws IOException {
    return bare("null");
  }

  private JsonWriter bare(String word) throws IOException {
    before();
    out.append(word);
    return this;
  }

  private void before() throws IOException {
    if (afterKey) {
      afterKey = false;
      return;
    }
    Level level = levels.peek();
    if (level == null) {
      return;
    }
    if (!level.empty) {
      out.append(level.inline ? ", " : ",");
    }
    level.empty = false;
    if (!level.inline) {
      newLine();
    }
  }

  private void newLine() throws IOException {
    out.append('\n').append("  ".repeat(levels.size()));
  }

  private void quote(String text) throws IOException {
    out.append('"');
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '"' -> out.append("\\\"");
        case '\\' -> out.append("\\\\");
        case '\n' -> out.append("\\n");
        case '\r' -> out.append("\\r");
        case '\t' -> out.append("\\t");
        default -> {
          if (escaped(text, i)) {
            out.append(String.format("\\u%04x", (int) c));
          } else {
            out.append(c);
          }
        }
      }
    }
    out.append('"');
  }

  /** Controls, direction marks that would garble the file's display, halves of a character. */
  private static boolean escaped(String text, int i) {
    char c = text.charAt(i);
    if (Character.isHighSurrogate(c)) {
      return i + 1 == text.length() || !Character.isLowSurrogate(text.charAt(i + 1));
    }
    if (Character.isLowSurrogate(c)) {
      return i == 0 || !Character.isHighSurrogate(text.charAt(i - 1));
    }
    return Character.isISOControl(c)
        || c >= '\u2028' && c <= '\u202E'
        || c >= '\u2066' && c <= '\u2069'
        || c >= '\uFFF9';
  }
}
