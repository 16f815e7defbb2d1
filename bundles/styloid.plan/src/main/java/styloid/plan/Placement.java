package styloid.plan;

import java.util.Objects;
import java.util.Optional;
import styloid.spi.Position;
import styloid.spi.Position.Body;
import styloid.spi.Position.Rotation;
import styloid.spi.Position.Support;

/**
 * How the patient is placed, as far as it is known. A step that does not mind a part leaves it as
 * it is; a part not known yet costs nothing to take up.
 */
public record Placement(
    Optional<Body> body, Optional<Support> support, Optional<Rotation> rotation) {
  public static final Placement UNKNOWN =
      new Placement(Optional.empty(), Optional.empty(), Optional.empty());

  public Placement {
    Objects.requireNonNull(body, "body");
    Objects.requireNonNull(support, "support");
    Objects.requireNonNull(rotation, "rotation");
    if (rotation.filter(Rotation.ANY::equals).isPresent()) {
      throw new IllegalArgumentException("the forearm is in some rotation, not in any");
    }
  }

  /** Placed for a step that needs {@code position}. */
  public Placement after(Optional<Position> position) {
    if (position.isEmpty()) {
      return this;
    }
    Position to = position.get();
    return new Placement(
        Optional.of(to.body()),
        Optional.of(to.support()),
        to.rotation() == Rotation.ANY ? rotation : Optional.of(to.rotation()));
  }

  /** What has to be changed for a step that needs {@code position}. */
  public Changes changesTo(Optional<Position> position) {
    if (position.isEmpty()) {
      return Changes.NONE;
    }
    Position to = position.get();
    int turned = to.rotation() == Rotation.ANY ? 0 : differs(rotation, to.rotation());
    return new Changes(differs(body, to.body()), differs(support, to.support()), turned);
  }

  private static <T> int differs(Optional<T> from, T to) {
    return from.isPresent() && from.get() != to ? 1 : 0;
  }
}
