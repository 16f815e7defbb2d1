package styloid.custom;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import styloid.exchange.json.Excerpt;
import styloid.exchange.json.NearMiss;
import styloid.model.Item;
import styloid.model.ItemKind;
import styloid.model.Side;
import styloid.model.norm.NormRow;

/**
 * The names formulas may use: items and results with underscores for hyphens, figures of norms as
 * {@code <table>_mean}. An ending {@code _right}, {@code _left} or {@code _other} names a side.
 */
final class Names {
  private static final Map<String, Reference.Which> ENDINGS =
      Map.of(
          "_right", Reference.Which.RIGHT,
          "_left", Reference.Which.LEFT,
          "_other", Reference.Which.OTHER);

  private final Map<String, Subject> subjects = new LinkedHashMap<>();

  /** The name of an id in formulas. */
  static String of(Object id) {
    return id.toString().replace('-', '_');
  }

  /** Adds a name; why it cannot be, if so. */
  Optional<String> add(String name, Subject subject) {
    if (name.equals("true") || name.equals("false")) {
      return Optional.of("\"" + name + "\" has a meaning of its own in formulas");
    }
    for (String ending : ENDINGS.keySet()) {
      if (name.endsWith(ending)) {
        return Optional.of("a name must not end with \"" + ending + "\", which names a side");
      }
    }
    return subjects.putIfAbsent(name, subject) == null
        ? Optional.empty()
        : Optional.of("the name \"" + name + "\" stands for something else already");
  }

  /** Adds the figures of a norm table. */
  Optional<String> add(Draft.Norm norm) {
    Optional<String> refused = Optional.empty();
    Set<String> figures = new java.util.TreeSet<>();
    for (NormRow row : norm.table().rows()) {
      if (row.keys().equals(norm.keys())) {
        row.mean().ifPresent(mean -> figures.add("mean"));
        row.sd().ifPresent(sd -> figures.add("sd"));
        row.centiles().keySet().forEach(centile -> figures.add("p" + centile));
      }
    }
    for (String figure : figures) {
      refused =
          refused.or(
              () ->
                  add(
                      norm.id() + "_" + figure,
                      new Subject.OfNorm(norm.id(), norm.table(), norm.keys(), figure)));
    }
    return refused;
  }

  /** What a name stands for. */
  Reference find(Term.Name name) throws FormulaException {
    return find(name.name(), name.at());
  }

  Reference find(String name, int at) throws FormulaException {
    Subject whole = subjects.get(name);
    if (whole != null) {
      return new Reference(name, whole, Reference.Which.OWN);
    }
    for (Map.Entry<String, Reference.Which> ending : ENDINGS.entrySet()) {
      if (name.endsWith(ending.getKey())) {
        Subject subject = subjects.get(name.substring(0, name.length() - ending.getKey().length()));
        if (subject != null) {
          if (subject.sides().contains(Side.UNSIDED)) {
            throw new FormulaException(
                at, "\"" + name + "\": this has no side, so leave \"" + ending.getKey() + "\" out");
          }
          return new Reference(name, subject, ending.getValue());
        }
      }
    }
    String text = Excerpt.of(name);
    String hint =
        subjects.isEmpty() ? "there are no names here" : NearMiss.hint(name, subjects.keySet());
    throw new FormulaException(
        at, "\"" + text + "\" is no item, result or norm of this test; " + hint);
  }

  /** The item of an id, in any spelling a formula uses. */
  Optional<Item> item(String id) {
    return subjects.get(of(id)) instanceof Subject.OfItem found
        ? Optional.of(found.item())
        : Optional.empty();
  }

  /** Ids of the items with choices. */
  List<String> choices() {
    return subjects.values().stream()
        .filter(Subject.OfItem.class::isInstance)
        .map(subject -> ((Subject.OfItem) subject).item())
        .filter(item -> item.kind() instanceof ItemKind.Choices)
        .map(item -> item.id().value())
        .toList();
  }
}
