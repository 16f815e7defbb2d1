package styloid.exchange.json;

import java.util.List;
import java.util.Map;

/** A JSON value that knows its place in the file. */
public sealed interface Node {
  Where where();

  /** What kind of value it is, as said to people. */
  String kind();

  /** An object; keys in the order written. */
  record Obj(Where where, Map<String, Node> members) implements Node {
    @Override
    public String kind() {
      return "an object {…}";
    }
  }

  /** A list. */
  record Arr(Where where, List<Node> values) implements Node {
    @Override
    public String kind() {
      return "a list […]";
    }
  }

  /** A string. */
  record Str(Where where, String text) implements Node {
    @Override
    public String kind() {
      return "text";
    }
  }

  /** A number, digits as written. */
  record Num(Where where, String digits) implements Node {
    @Override
    public String kind() {
      return "a number";
    }
  }

  /** True or false. */
  record Bool(Where where, boolean value) implements Node {
    @Override
    public String kind() {
      return "true or false";
    }
  }

  /** The word null. */
  record Null(Where where) implements Node {
    @Override
    public String kind() {
      return "null";
    }
  }
}
