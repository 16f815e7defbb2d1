package styloid.exchange;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import styloid.model.Digit;
import styloid.model.ItemId;
import styloid.spi.Guide;
import styloid.spi.Mark;
import styloid.spi.Picture;
import styloid.spi.Pose;
import styloid.spi.Position;
import styloid.spi.Sweep;

/** Writes how a group of items is done. */
final class GuideWriter {
  private final JsonWriter out;

  GuideWriter(JsonWriter out) {
    this.out = out;
  }

  void guide(Guide guide) throws IOException {
    out.key("guide").object();
    position("position", guide.position());
    position("gravityReduced", guide.gravityReduced());
    if (!guide.lines().isEmpty()) {
      out.key("lines").list();
      for (Guide.Line line : guide.lines()) {
        out.inlineObject().key("topic").text(line.topic().code());
        out.key("label").text(line.labelKey()).end();
      }
      out.end();
    }
    picture(guide.picture());
    itemPictures(guide.itemPictures());
    sweeps(guide.sweeps());
    out.end();
  }

  private void position(String key, Optional<Position> position) throws IOException {
    if (position.isPresent()) {
      out.key(key).inlineObject().key("body").text(position.get().body().code());
      out.key("support").text(position.get().support().code());
      out.key("rotation").text(position.get().rotation().code()).end();
    }
  }

  private void picture(Picture picture) throws IOException {
    if (picture.view() != Picture.View.FITTING) {
      out.key("view").text(picture.view().code());
    }
    pose(picture.pose());
    if (!picture.marks().isEmpty()) {
      out.key("marks").list();
      for (Mark mark : picture.marks()) {
        mark(mark);
      }
      out.end();
    }
  }

  private void pose(Pose pose) throws IOException {
    if (!pose.degrees().isEmpty()) {
      out.key("pose");
      angles(pose.degrees());
    }
    if (!pose.fingers().isEmpty()) {
      out.key("fingers").object();
      for (Map.Entry<Digit, Map<Pose.Joint, Integer>> finger :
          new TreeMap<>(pose.fingers()).entrySet()) {
        out.key(finger.getKey().code());
        angles(finger.getValue());
      }
      out.end();
    }
  }

  private void angles(Map<Pose.Joint, Integer> angles) throws IOException {
    out.inlineObject();
    for (Map.Entry<Pose.Joint, Integer> joint : new TreeMap<>(angles).entrySet()) {
      out.key(joint.getKey().code()).number(joint.getValue());
    }
    out.end();
  }

  private void mark(Mark mark) throws IOException {
    out.inlineObject().key("kind").text(mark.kind().code());
    out.key("segment").text(mark.segment().code());
    out.key("along").number(mark.along());
    out.key("aspect").text(mark.aspect().code());
    if (!mark.digits().isEmpty()) {
      out.key("digits").inlineList();
      for (Digit digit : new TreeSet<>(mark.digits())) {
        out.text(digit.code());
      }
      out.end();
    }
    out.end();
  }

  private void itemPictures(List<Guide.ItemPicture> pictures) throws IOException {
    if (pictures.isEmpty()) {
      return;
    }
    out.key("itemPictures").list();
    for (Guide.ItemPicture picture : pictures) {
      out.object().key("items").inlineList();
      for (ItemId item : new TreeSet<>(picture.items())) {
        out.text(item.value());
      }
      out.end().key("reduced").truth(picture.reduced());
      picture(picture.picture());
      out.end();
    }
    out.end();
  }

  private void sweeps(List<Sweep> sweeps) throws IOException {
    if (sweeps.isEmpty()) {
      return;
    }
    out.key("sweeps").list();
    for (Sweep sweep : sweeps) {
      out.inlineObject().key("item").text(sweep.item().value());
      out.key("joint").text(sweep.joint().code());
      out.key("reversed").truth(sweep.reversed());
      out.key("zero").number(sweep.zero());
      out.key("drawn").number(sweep.drawn());
      if (sweep.shortOf().isPresent()) {
        out.key("shortOf").text(sweep.shortOf().get().value());
      }
      out.end();
    }
    out.end();
  }
}
