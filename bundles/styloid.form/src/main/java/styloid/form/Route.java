package styloid.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.spi.Group;

/** The walk through all groups of a page. */
final class Route {
  private final List<Stop> stops;

  private Route(List<Stop> stops) {
    this.stops = stops;
  }

  static Route through(FormState state, List<Group> groups) {
    ArrayList<Stop> stops = new ArrayList<>();
    for (Group group : groups) {
      for (ItemKey key : Walk.order(state.test().id(), group, state.sides())) {
        Item item = state.test().item(key.item()).orElseThrow();
        stops.add(new Stop(group, item, key));
      }
    }
    return new Route(List.copyOf(stops));
  }

  List<Stop> stops() {
    return stops;
  }

  /** The next place to stop at, whether it may be left out or not; empty at the end of the page. */
  Optional<ItemKey> next(ItemKey from, FormState state) {
    return search(from, state, 1, stop -> true);
  }

  /** The place before; empty at the beginning of the page. */
  Optional<ItemKey> previous(ItemKey from, FormState state) {
    return search(from, state, -1, stop -> true);
  }

  /**
   * The next place that must be filled. Whoever has gone to one that may be left out is led through
   * those of its group.
   */
  Optional<ItemKey> onward(ItemKey from, FormState state) {
    Stop here = stops.get(indexOf(from));
    return search(
        from,
        state,
        1,
        stop ->
            !stop.item().optional() || here.item().optional() && stop.group().equals(here.group()));
  }

  private Optional<ItemKey> search(
      ItemKey from, FormState state, int step, Predicate<Stop> wanted) {
    for (int at = indexOf(from) + step; at >= 0 && at < stops.size(); at += step) {
      Stop stop = stops.get(at);
      if (wanted.test(stop) && state.stopsAt(stop.group(), stop.item(), stop.key())) {
        return Optional.of(stop.key());
      }
    }
    return Optional.empty();
  }

  private int indexOf(ItemKey key) {
    for (int at = 0; at < stops.size(); at++) {
      if (stops.get(at).key().equals(key)) {
        return at;
      }
    }
    throw new IllegalArgumentException("not on this page: " + key);
  }

  /** The same place on the other limb, where the item has one. */
  Optional<ItemKey> otherSide(ItemKey from) {
    ItemKey opposite = from.opposite();
    boolean exists =
        !opposite.equals(from) && stops.stream().anyMatch(s -> s.key().equals(opposite));
    return exists ? Optional.of(opposite) : Optional.empty();
  }

  /** Where entry begins: the first place without an entry, else the first of all. */
  Optional<ItemKey> start(FormState state) {
    Optional<ItemKey> first = Optional.empty();
    for (Stop stop : stops) {
      if (!state.stopsAt(stop.group(), stop.item(), stop.key())) {
        continue;
      }
      boolean empty = state.value(stop.key()).isEmpty() && !stop.item().optional();
      if (empty && state.withheldBy(stop.group(), stop.item(), stop.key()).isEmpty()) {
        return Optional.of(stop.key());
      }
      first = first.or(() -> Optional.of(stop.key()));
    }
    return first;
  }

  /** Where entry begins in one group. */
  Optional<ItemKey> start(FormState state, String group) {
    return new Route(stops.stream().filter(s -> s.group().id().equals(group)).toList())
        .start(state);
  }
}
