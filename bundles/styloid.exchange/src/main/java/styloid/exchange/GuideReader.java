package styloid.exchange;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import styloid.exchange.json.Decoder;
import styloid.exchange.json.Decoders;
import styloid.exchange.json.Fields;
import styloid.model.Codes;
import styloid.spi.Guide;
import styloid.spi.Mark;
import styloid.spi.Pose;
import styloid.spi.Position;

/** Reads how a group of items is done; its parts are shared with declared tests. */
public final class GuideReader {
  private GuideReader() {}

  static Guide guide(Fields f) {
    Optional<Position> position = f.may("position", Fields.object(GuideReader::position));
    Optional<Position> reduced = f.may("gravityReduced", Fields.object(GuideReader::position));
    List<Guide.Line> lines = f.list("lines", Fields.object(GuideReader::line));
    Map<Pose.Joint, Integer> pose = f.may("pose", pose()).orElseGet(HashMap::new);
    List<Mark> marks = f.list("marks", Fields.object(GuideReader::mark));
    return f.make(() -> new Guide(position, reduced, lines, new Pose(pose), marks));
  }

  /** Joint angles by joint. */
  public static Decoder<Map<Pose.Joint, Integer>> pose() {
    return Decoders.map(joint -> Codes.parse(Pose.Joint.class, joint), Decoders::whole);
  }

  /** How the patient is placed. */
  public static Position position(Fields f) {
    var body = f.need("body", Decoders.code("body position", Position.Body.class));
    var support = f.need("support", Decoders.code("support", Position.Support.class));
    var rotation = f.need("rotation", Decoders.code("rotation", Position.Rotation.class));
    return f.make(() -> new Position(body, support, rotation));
  }

  private static Guide.Line line(Fields f) {
    var topic = f.need("topic", Decoders.code("topic", Guide.Topic.class));
    String label = f.need("label", Decoders::text);
    return f.make(() -> new Guide.Line(topic, label));
  }

  /** A point or arrow of the picture. */
  public static Mark mark(Fields f) {
    var kind = f.need("kind", Decoders.code("mark", Mark.Kind.class));
    var segment = f.need("segment", Decoders.code("segment", Mark.Segment.class));
    Double along = f.need("along", Decoders::fraction);
    var aspect = f.need("aspect", Decoders.code("aspect", Mark.Aspect.class));
    return f.make(() -> new Mark(kind, segment, along, aspect));
  }
}
