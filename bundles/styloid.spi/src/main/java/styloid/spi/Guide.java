package styloid.spi;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import styloid.model.Codes;
import styloid.model.ItemId;

/**
 * How a group of items is done: positions, instructions, and what a picture of it shows.
 *
 * @param position first position of the patient; empty when any will do
 * @param gravityReduced position used only when the limb does not manage against gravity
 * @param lines instructions, in the order to be read
 * @param picture the limb in the first position
 * @param itemPictures pictures of single items that differ from that of the group
 * @param sweeps how measured angles are drawn; empty where none is measured
 */
public record Guide(
    Optional<Position> position,
    Optional<Position> gravityReduced,
    List<Line> lines,
    Picture picture,
    List<ItemPicture> itemPictures,
    List<Sweep> sweeps) {

  /** An instruction: its kind and the key of its words in the test's labels. */
  public record Line(Topic topic, String labelKey) {
    public Line {
      Objects.requireNonNull(topic, "topic");
      Objects.requireNonNull(labelKey, "labelKey");
    }
  }

  /**
   * What is drawn while some items are asked.
   *
   * @param reduced whether they are asked in the gravity-reduced position
   */
  public record ItemPicture(Set<ItemId> items, boolean reduced, Picture picture) {
    public ItemPicture {
      items = Set.copyOf(items);
      Objects.requireNonNull(picture, "picture");
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
    itemPictures = List.copyOf(itemPictures);
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
        List.of(),
        List.of());
  }

  public Pose pose() {
    return picture.pose();
  }

  public List<Mark> marks() {
    return picture.marks();
  }

  /** Whether an item is asked in the gravity-reduced position. */
  public boolean isReduced(ItemId item) {
    return itemPictures.stream().anyMatch(p -> p.reduced() && p.items().contains(item));
  }

  /** What is drawn while an item is asked. */
  public Picture picture(ItemId item) {
    return itemPictures.stream()
        .filter(p -> p.items().contains(item))
        .map(ItemPicture::picture)
        .findFirst()
        .orElse(picture);
  }

  /** Whether there is anything to be drawn. */
  public boolean hasPicture() {
    return !picture.equals(Picture.none());
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
