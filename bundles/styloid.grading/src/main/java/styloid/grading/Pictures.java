package styloid.grading;

import java.util.List;
import java.util.Map;
import java.util.Set;
import styloid.model.Codes;
import styloid.model.Digit;
import styloid.spi.Mark;
import styloid.spi.Picture;
import styloid.spi.Picture.View;
import styloid.spi.Pose;
import styloid.spi.Pose.Joint;

/**
 * Reads the pictures of a motion from its row of motions.csv. A pose is {@code joint=degrees} or, of
 * one finger, {@code finger.joint=degrees}; a mark {@code kind:segment:along:aspect}, with {@code
 * @index+ring} behind it where it is on these fingers only.
 */
final class Pictures {
  private Pictures() {}

  static Picture first(Map<String, String> row) {
    return new Picture(
        pose(Pose.neutral(), row.get("pose")),
        Motion.words(row.get("marks")).stream().map(Pictures::mark).toList(),
        view(row.get("view")));
  }

  /** The first pose with what the reduced one changes; nothing is resisted there. */
  static Picture reduced(Map<String, String> row) {
    Picture first = first(row);
    List<Mark> marks =
        first.marks().stream()
            .filter(m -> m.kind() != Mark.Kind.RESIST && m.kind() != Mark.Kind.RESIST_TURN)
            .toList();
    String view = row.get("reduced_view");
    return new Picture(
        pose(first.pose(), row.get("reduced_pose")),
        marks,
        view.isEmpty() ? first.view() : view(view));
  }

  private static View view(String cell) {
    return Codes.parse(View.class, cell);
  }

  private static Pose pose(Pose from, String cell) {
    Pose pose = from;
    for (String word : Motion.words(cell)) {
      String[] parts = word.split("=");
      int degrees = Integer.parseInt(parts[1]);
      int dot = parts[0].indexOf('.');
      Joint joint = Codes.parse(Joint.class, parts[0].substring(dot + 1));
      pose =
          dot < 0
              ? pose.with(joint, degrees)
              : pose.with(joint, Codes.parse(Digit.class, parts[0].substring(0, dot)), degrees);
    }
    return pose;
  }

  private static Mark mark(String word) {
    String[] at = word.split("@");
    String[] parts = at[0].split(":");
    return new Mark(
        Codes.parse(Mark.Kind.class, parts[0]),
        Codes.parse(Mark.Segment.class, parts[1]),
        Double.parseDouble(parts[2]),
        Codes.parse(Mark.Aspect.class, parts[3]),
        at.length == 1 ? Set.of() : Motion.codes(Digit.class, at[1], "\\+"));
  }
}
