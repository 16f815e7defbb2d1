package styloid.exchange.json;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * The keys of one object while it is read. Every key asked for becomes a known one; {@link #make}
 * refuses the others and gives the object only when all its parts could be read.
 */
public final class Fields {
  private final Node.Obj object;
  private final Problems problems;
  private final LinkedHashSet<String> known = new LinkedHashSet<>();
  private final int before;

  private Fields(Node.Obj object, Problems problems) {
    this.object = object;
    this.problems = problems;
    this.before = problems.count();
  }

  /** A decoder of objects. */
  public static <T> Decoder<T> object(Function<Fields, T> read) {
    return (node, problems) ->
        node instanceof Node.Obj object
            ? read.apply(new Fields(object, problems))
            : Decoders.wrong(node, "an object {…}", problems);
  }

  public boolean has(String key) {
    return object.members().containsKey(key);
  }

  /** The value of a key that must be there; null when a problem was added instead. */
  public <T> T need(String key, Decoder<T> decoder) {
    known.add(key);
    Node node = object.members().get(key);
    if (node == null) {
      problems.add(object.where(), "\"" + key + "\" is missing");
      return null;
    }
    return decoder.decode(node, problems);
  }

  /** The value of a key that may be left out. */
  public <T> Optional<T> may(String key, Decoder<T> decoder) {
    known.add(key);
    Node node = object.members().get(key);
    return node == null ? Optional.empty() : Optional.ofNullable(decoder.decode(node, problems));
  }

  /** The list of a key that may be left out. */
  public <T> List<T> list(String key, Decoder<T> each) {
    return may(key, Decoders.list(each)).orElseGet(ArrayList::new);
  }

  /** The one of these keys the object has; null, with a problem, when none or several stand. */
  public String oneOf(String... keys) {
    known.addAll(List.of(keys));
    List<String> found = List.of(keys).stream().filter(this::has).toList();
    if (found.size() == 1) {
      return found.get(0);
    }
    String all = String.join(", ", keys);
    problems.add(
        object.where(),
        found.isEmpty()
            ? "one of these keys is missing: " + all
            : "only one of these keys may stand: " + all);
    return null;
  }

  public void problem(String key, String reason) {
    Node node = object.members().get(key);
    problems.add(node == null ? object.where() : node.where(), reason);
  }

  /** Whether nothing was wrong so far. */
  public boolean sound() {
    return problems.count() == before;
  }

  /** Place of the object. */
  public Where where() {
    return object.where();
  }

  /** Place of a key's value; of the object where it is left out. */
  public Where where(String key) {
    Node node = object.members().get(key);
    return node == null ? object.where() : node.where();
  }

  /** Where problems of this object go. */
  public Problems problems() {
    return problems;
  }

  /** What a part of the object stands for; what the model refuses is a problem of the object. */
  public <T> T judged(Supplier<T> maker) {
    return Decoders.judged(object, problems, maker);
  }

  /** What the object stands for, once all keys were asked for. */
  public <T> T make(Supplier<T> maker) {
    refuseOthers();
    return sound() ? Decoders.judged(object, problems, maker) : null;
  }

  /** What some keys of the object stand for, while others are still to be read. */
  public <T> T part(Supplier<T> maker) {
    return sound() ? Decoders.judged(object, problems, maker) : null;
  }

  private void refuseOthers() {
    object
        .members()
        .forEach(
            (key, node) -> {
              if (!known.contains(key)) {
                problems.add(node.where(), "unknown key; " + NearMiss.hint(key, known));
              }
            });
  }
}
