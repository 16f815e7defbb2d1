package styloid.shell.map;

import java.util.ArrayList;
import java.util.Set;
import styloid.figure.MapMark;
import styloid.model.ItemKey;
import styloid.model.Side;
import styloid.shell.frame.Shell;
import styloid.spi.Texts;

/** The words of the map. */
final class MapWords {
  private final Texts texts;

  MapWords(Texts texts) {
    this.texts = texts;
  }

  Texts texts() {
    return texts;
  }

  String say(String key, Object... args) {
    return Shell.say(texts, key, args);
  }

  /** "Patient's right", and whether it is the involved side. */
  String limb(Side side, Set<Side> involved) {
    String limb = say("map.limb." + side.code());
    return involved.contains(side) ? say("map.involved", limb) : limb;
  }

  /** "in progress, 3 left, precaution in force, out of the ordinary". */
  String state(PartState state) {
    ArrayList<String> words = new ArrayList<>();
    words.add(stage(state.stage()));
    if (state.stage() == PartState.Stage.IN_PROGRESS) {
      words.add(say("nav.left", state.open()));
    }
    if (state.limited() && state.stage() != PartState.Stage.WITHHELD) {
      words.add(say("map.limited"));
    }
    if (state.notable()) {
      words.add(say("map.notable"));
    }
    return String.join(", ", words);
  }

  String stage(PartState.Stage stage) {
    return say("map.stage." + stage.code());
  }

  /** "Left wrist, done". */
  String part(SidedPart part, PartState state) {
    return say("map.part", part.words(texts), state(state));
  }

  String test(PartSheet.Step step) {
    return texts.label(step.test().id().value(), "test.title");
  }

  String group(PartSheet.Step step) {
    return texts.label(step.test().id().value(), "group." + step.group().id());
  }

  /** The item, and its digit and trial where it has several. */
  String item(ItemKey key, int trials) {
    String item = texts.item(key);
    return trials > 1 ? say("map.trial", item, key.trial()) : item;
  }

  static MapMark mark(PartState state) {
    MapMark.Progress progress = MapMark.Progress.valueOf(state.stage().name());
    return new MapMark(progress, state.limited(), state.notable());
  }
}
