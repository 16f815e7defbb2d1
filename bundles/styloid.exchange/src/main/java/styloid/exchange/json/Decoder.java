package styloid.exchange.json;

import java.util.function.Function;

/** Turns a JSON value into something of ours. */
@FunctionalInterface
public interface Decoder<T> {
  /** What the value stands for; null when that could not be told and a problem was added. */
  T decode(Node node, Problems problems);

  /** This decoder with a place for its problems. */
  default Function<Node, T> with(Problems problems) {
    return node -> decode(node, problems);
  }
}
