package styloid.exchange.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonStreamContext;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import java.io.IOException;
import java.io.PushbackReader;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.Optional;

/**
 * Reads JSON text (RFC 8259, nothing more lenient) into located values. Size, nesting and number of
 * values are bounded, so that no file can exhaust the memory or the stack.
 */
public final class JsonReader {
  public static final int DEEPEST = 64;
  public static final int MOST_VALUES = 1_000_000;
  public static final int LONGEST_FILE = 32_000_000;
  public static final int LONGEST_TEXT = 8_000_000;

  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(DEEPEST)
                  .maxDocumentLength(LONGEST_FILE)
                  .maxStringLength(LONGEST_TEXT)
                  .maxNameLength(1000)
                  .maxNumberLength(100)
                  .build())
          .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
          .disable(JsonFactory.Feature.INTERN_FIELD_NAMES)
          .disable(StreamReadFeature.AUTO_CLOSE_SOURCE)
          .build();

  private final JsonParser parser;
  private final Problems problems;
  private int values;

  private JsonReader(JsonParser parser, Problems problems) {
    this.parser = parser;
    this.problems = problems;
  }

  /** The file's one value; empty when the text is no JSON, with the reason among the problems. */
  public static Optional<Node> read(Reader in, Problems problems) throws IOException {
    PushbackReader text = new PushbackReader(in);
    try (JsonParser parser = FACTORY.createParser(text)) {
      skipByteOrderMark(text);
      return new JsonReader(parser, problems).whole();
    } catch (CharacterCodingException e) {
      problems.add(Where.root(0, 0), "the file is not UTF-8 text; save it as UTF-8");
      return Optional.empty();
    }
  }

  private static void skipByteOrderMark(PushbackReader text) throws IOException {
    int first = text.read();
    if (first >= 0 && first != '\uFEFF') {
      text.unread(first);
    }
  }

  private Optional<Node> whole() throws IOException {
    try {
      JsonToken first = parser.nextToken();
      if (first == null) {
        problems.add(Where.root(1, 1), "the file is empty");
        return Optional.empty();
      }
      Node node = value(first, null, "$");
      if (parser.nextToken() != null) {
        problems.add(at(parser.currentTokenLocation(), null, "$"), "nothing may follow the end");
        return Optional.empty();
      }
      return Optional.of(node);
    } catch (TooMany e) {
      problems.add(
          here(parser.currentLocation()), "the file holds more than " + MOST_VALUES + " values");
    } catch (StreamConstraintsException e) {
      problems.add(
          here(e.getLocation()),
          "too large or nested too deep: " + Excerpt.ofMessage(e.getOriginalMessage()));
    } catch (JsonProcessingException e) {
      problems.add(
          here(e.getLocation()),
          "not valid JSON: " + Excerpt.ofMessage(inWords(e.getOriginalMessage())));
    }
    return Optional.empty();
  }

  /** The library's message without what only its own users understand. */
  private static String inWords(String message) {
    return message
        .replaceAll(":? ?enable `[^`]*` to allow", "")
        .replaceAll("\\(not recognized as one since [^)]*\\)", "")
        .replace("((CTRL-CHAR, code 10))", "(the end of the line)")
        .replace("((CTRL-CHAR, code 9))", "(a tab)")
        .replaceAll(" ?\\((?:CTRL-CHAR, )?code \\d+\\)", "")
        .replaceAll("was expecting \\(JSON String[^)]*\\)", "was expecting a value")
        .replaceAll(" \\(JSON String[^)]*\\)", "")
        .strip();
  }

  /** Innermost place reached, for faults of the text itself. */
  private Where here(JsonLocation place) {
    Where within = within(parser.getParsingContext());
    JsonLocation known = place == null ? parser.currentLocation() : place;
    return at(known, within.parent(), within.step());
  }

  private static Where within(JsonStreamContext context) {
    if (context.inRoot()) {
      return Where.root(0, 0);
    }
    Where parent = within(context.getParent());
    if (context.inArray()) {
      return new Where(0, 0, parent, Math.max(0, context.getCurrentIndex()));
    }
    return context.getCurrentName() == null
        ? parent
        : new Where(0, 0, parent, context.getCurrentName());
  }

  private static Where at(JsonLocation place, Where parent, Object step) {
    return new Where(place.getLineNr(), place.getColumnNr(), parent, step);
  }

  private Node value(JsonToken token, Where parent, Object step) throws IOException {
    if (++values > MOST_VALUES) {
      throw new TooMany();
    }
    Where where = at(parser.currentTokenLocation(), parent, step);
    return switch (token) {
      case START_OBJECT -> object(where);
      case START_ARRAY -> array(where);
      case VALUE_STRING -> new Node.Str(where, parser.getText());
      case VALUE_TRUE -> new Node.Bool(where, true);
      case VALUE_FALSE -> new Node.Bool(where, false);
      case VALUE_NULL -> new Node.Null(where);
      default -> new Node.Num(where, parser.getText());
    };
  }

  private Node object(Where where) throws IOException {
    LinkedHashMap<String, Node> members = new LinkedHashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String key = parser.currentName();
      Where keyAt = at(parser.currentTokenLocation(), where, key);
      Node value = value(parser.nextToken(), where, key);
      Node earlier = members.putIfAbsent(key, value);
      if (earlier != null) {
        problems.add(keyAt, "stands twice, first in line " + earlier.where().line());
      }
    }
    return new Node.Obj(where, members);
  }

  private Node array(Where where) throws IOException {
    ArrayList<Node> list = new ArrayList<>();
    for (JsonToken t = parser.nextToken(); t != JsonToken.END_ARRAY; t = parser.nextToken()) {
      list.add(value(t, where, list.size()));
    }
    return new Node.Arr(where, list);
  }

  /** Ends the reading of a file with too many values. */
  private static final class TooMany extends IOException {
    private static final long serialVersionUID = 1L;
  }
}
