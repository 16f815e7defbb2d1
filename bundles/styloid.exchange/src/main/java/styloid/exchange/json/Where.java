package styloid.exchange.json;

import styloid.model.FileProblem;

/**
 * Place of a value in a file. The path is put together only when asked for, since most values are
 * in order.
 *
 * @param parent place of the object or list around it; null for the whole file
 * @param step key in the object, or index in the list
 */
public record Where(int line, int column, Where parent, Object step) {

  public static Where root(int line, int column) {
    return new Where(line, column, null, "$");
  }

  /** JSON path, such as {@code $.entries[3].value}; odd keys are quoted. */
  public String path() {
    StringBuilder path = new StringBuilder();
    write(path);
    return path.toString();
  }

  private void write(StringBuilder path) {
    if (parent == null) {
      path.append(step);
      return;
    }
    parent.write(path);
    if (step instanceof Integer index) {
      path.append('[').append(index).append(']');
      return;
    }
    String key = (String) step;
    if (key.matches("[A-Za-z_][A-Za-z0-9_-]{0,80}")) {
      path.append('.').append(key);
    } else {
      path.append("['").append(Excerpt.of(key).replace("'", "\\'")).append("']");
    }
  }

  public FileProblem problem(String reason) {
    return new FileProblem(line, column, path(), reason);
  }
}
