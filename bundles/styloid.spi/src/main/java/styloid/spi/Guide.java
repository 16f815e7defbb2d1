package styloid.spi;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import styloid.model.Codes;
import styloid.model.ItemId;

/**
 * How a group of items is done: positions, instructions, and what a picture of it shows.
 *
 * @param position first position of the patient; empty when any will do
 * @param gravityReduced position used only when the limb does not manage against gravity
 * @param lines instructions, in the order to be read
 * @param picture the limb in the first position
 * @param reducedPicture the limb in the gravity-reduced position
 * @param sweeps how measured angles are drawn; empty where none is measured
 */
public record Guide(
    Optional<Position> position,
    Optional<Position> gravityReduced,
    List<Line> lines,
    Picture picture,
    Optional<Picture> reducedPicture,
    List<Sweep> sweeps) {

  /** An instruction: its kind and the key of its words in the test's labels. */
  public record Line(Topic topic, String labelKey) {
    public Line {
      Objects.requireNonNull(topic, "topic");
      Objects.requireNonNull(labelKey, "labelKey");
    }
  }

  /** What an instruction is about. */
  public enum Topic {
    /** Prime movers with nerve and roots. */
    MUSCLES,
    POSITION,
    GRAVITY_REDUCED,
    SUPPORT,
    RESIST,
    JOINT_ANGLE,
    PALPATE,
    SUBSTITUTION,
    AXIS,
    STATIONARY_ARM,
    MOVING_ARM,
    COMPENSATION,
    INSTRUCTION,
    /** What is judged instead where the usual criteria do not fit. */
    CRITERIA;

    public String code() {
      return Codes.of(this);
    }
  }

  public Guide {
    Objects.requireNonNull(position, "position");
    Objects.requireNonNull(gravityReduced, "gravityReduced");
    lines = List.copyOf(lines);
    Objects.requireNonNull(picture, "picture");
    Objects.requireNonNull(reducedPicture, "reducedPicture");
    sweeps = List.copyOf(sweeps);
  }

  /** One picture, seen as the drawer thinks fit. */
  public Guide(
      Optional<Position> position,
      Optional<Position> gravityReduced,
      List<Line> lines,
      Pose pose,
      List<Mark> marks) {
    this(
        position,
        gravityReduced,
        lines,
        new Picture(pose, marks, Picture.View.FITTING),
        Optional.empty(),
        List.of());
  }

  public Pose pose() {
    return picture.pose();
  }

  public List<Mark> marks() {
    return picture.marks();
  }

  /** How the angle of an item is drawn, where it is. */
  public Optional<Sweep> sweep(ItemId item) {
    return sweeps.stream().filter(sweep -> sweep.item().equals(item)).findFirst();
  }

  /** No instructions and no picture. */
  public static Guide none() {
    return new Guide(Optional.empty(), Optional.empty(), List.of(), Pose.neutral(), List.of());
  }
}
