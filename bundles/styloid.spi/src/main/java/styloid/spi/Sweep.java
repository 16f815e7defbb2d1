package styloid.spi;

import java.util.Objects;
import java.util.Optional;
import styloid.model.ItemId;
import styloid.model.ResultId;

/**
 * How the angle of an item is drawn as an arc: the joint of the pose stands at {@code zero} plus
 * the angle, or minus it where {@code reversed}.
 *
 * @param item an angle in degrees
 * @param zero where the pose's joint stands when the item reads 0°
 * @param drawn degrees at which the limb is drawn before a value is there
 * @param shortOf result that says how many degrees the item is short of the chosen reference
 */
public record Sweep(
    ItemId item,
    Pose.Joint joint,
    boolean reversed,
    int zero,
    int drawn,
    Optional<ResultId> shortOf) {
  public Sweep {
    Objects.requireNonNull(item, "item");
    Objects.requireNonNull(joint, "joint");
    Objects.requireNonNull(shortOf, "shortOf");
  }

  /** Angle of the pose's joint when the item reads so many degrees. */
  public double joint(double degrees) {
    return zero + (reversed ? -degrees : degrees);
  }
}
