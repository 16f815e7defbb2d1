package styloid.shell.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import styloid.model.LimbPart;
import styloid.model.Side;
import styloid.spi.Texts;

/** A part of the right or left limb. */
record SidedPart(LimbPart part, Side side) {
  SidedPart {
    Objects.requireNonNull(part, "part");
    if (side == Side.UNSIDED) {
      throw new IllegalArgumentException("a part is of the right or left limb");
    }
  }

  /** All of them, right first, each from proximal to distal. */
  static List<SidedPart> all() {
    ArrayList<SidedPart> all = new ArrayList<>();
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      for (LimbPart part : LimbPart.values()) {
        all.add(new SidedPart(part, side));
      }
    }
    return all;
  }

  /** "Left wrist": the side is always said. */
  String words(Texts texts) {
    String words = texts.word(side) + " " + texts.word(part);
    return words.substring(0, 1).toUpperCase(texts.locale()) + words.substring(1);
  }
}
