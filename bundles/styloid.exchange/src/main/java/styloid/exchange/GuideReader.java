package styloid.exchange;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import styloid.exchange.json.Decoder;
import styloid.exchange.json.Decoders;
import styloid.exchange.json.Fields;
import styloid.model.Codes;
import styloid.model.Digit;
import styloid.model.ItemId;
import styloid.model.ResultId;
import styloid.spi.Guide;
import styloid.spi.Mark;
import styloid.spi.Picture;
import styloid.spi.Pose;
import styloid.spi.Position;
import styloid.spi.Sweep;

/** Reads how a group of items is done; its parts are shared with declared tests. */
public final class GuideReader {
  private GuideReader() {}

  static Guide guide(Fields f) {
    Optional<Position> position = f.may("position", Fields.object(GuideReader::position));
    Optional<Position> reduced = f.may("gravityReduced", Fields.object(GuideReader::position));
    List<Guide.Line> lines = f.list("lines", Fields.object(GuideReader::line));
    Picture picture = picture(f);
    List<Guide.ItemPicture> others =
        f.list("itemPictures", Fields.object(GuideReader::itemPicture));
    List<Sweep> sweeps = f.list("sweeps", Fields.object(GuideReader::sweep));
    return f.make(() -> new Guide(position, reduced, lines, picture, others, sweeps));
  }

  /** Keys of a picture stand beside those of what it belongs to; null after a problem. */
  private static Picture picture(Fields f) {
    var view = f.may("view", view()).orElse(Picture.View.FITTING);
    Map<Pose.Joint, Integer> angles = f.may("pose", pose()).orElseGet(HashMap::new);
    Map<Digit, Map<Pose.Joint, Integer>> fingers =
        f.may("fingers", fingers()).orElseGet(HashMap::new);
    List<Mark> marks = f.list("marks", Fields.object(GuideReader::mark));
    return f.part(() -> new Picture(new Pose(angles, fingers), marks, view));
  }

  private static Guide.ItemPicture itemPicture(Fields f) {
    List<ItemId> items = f.need("items", Decoders.list(Decoders.of(ItemId::new)));
    Boolean reduced = f.need("reduced", Decoders::truth);
    Picture picture = picture(f);
    return f.make(() -> new Guide.ItemPicture(new HashSet<>(items), reduced, picture));
  }

  private static Sweep sweep(Fields f) {
    ItemId item = f.need("item", Decoders.of(ItemId::new));
    var joint = f.need("joint", Decoders.code("joint", Pose.Joint.class));
    Boolean reversed = f.need("reversed", Decoders::truth);
    Integer zero = f.need("zero", Decoders::whole);
    Integer drawn = f.need("drawn", Decoders::whole);
    Optional<ResultId> shortOf = f.may("shortOf", Decoders.of(ResultId::new));
    return f.make(() -> new Sweep(item, joint, reversed, zero, drawn, shortOf));
  }

  /** Joint angles by joint. */
  public static Decoder<Map<Pose.Joint, Integer>> pose() {
    return Decoders.map(joint -> Codes.parse(Pose.Joint.class, joint), Decoders::whole);
  }

  /** Joint angles of single fingers. */
  public static Decoder<Map<Digit, Map<Pose.Joint, Integer>>> fingers() {
    return Decoders.map(digit -> Codes.parse(Digit.class, digit), pose());
  }

  /** From where a picture is seen. */
  public static Decoder<Picture.View> view() {
    return Decoders.code("view", Picture.View.class);
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
    List<Digit> digits = f.list("digits", Decoders.code("digit", Digit.class));
    return f.make(() -> new Mark(kind, segment, along, aspect, new HashSet<>(digits)));
  }
}
