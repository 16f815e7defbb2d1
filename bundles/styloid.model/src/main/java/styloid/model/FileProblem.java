package styloid.model;

/**
 * Something wrong in a file.
 *
 * @param line from 1; 0 when it concerns the file as a whole
 * @param path JSON path, such as {@code $.evaluations[0].entries[3].value}
 */
public record FileProblem(int line, int column, String path, String reason) {
  @Override
  public String toString() {
    return "line " + line + ", column " + column + ", " + path + ": " + reason;
  }
}
