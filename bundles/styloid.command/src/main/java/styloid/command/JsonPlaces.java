package styloid.command;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonStreamContext;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import styloid.model.FileProblem;

/** Finds the lines of JSON paths in a file that is known to be well formed. */
final class JsonPlaces {
  private JsonPlaces() {}

  /** The reasons with the place their path begins at, in the order of the file. */
  static List<FileProblem> place(Path file, Map<String, String> reasons) throws IOException {
    ArrayList<FileProblem> placed = new ArrayList<>();
    try (Reader in = Files.newBufferedReader(file);
        JsonParser parser = new JsonFactory().createParser(in)) {
      while (placed.size() < reasons.size() && parser.nextToken() != null) {
        if (parser.currentToken().isStructStart()) {
          String path = path(parser.getParsingContext().getParent());
          String reason = reasons.get(path);
          if (reason != null) {
            placed.add(
                new FileProblem(
                    parser.currentTokenLocation().getLineNr(),
                    parser.currentTokenLocation().getColumnNr(),
                    path,
                    reason));
          }
        }
      }
    }
    return placed;
  }

  private static String path(JsonStreamContext context) {
    if (context == null || context.inRoot()) {
      return "$";
    }
    String parent = path(context.getParent());
    return context.inArray()
        ? parent + "[" + context.getCurrentIndex() + "]"
        : parent + "." + context.getCurrentName();
  }
}
