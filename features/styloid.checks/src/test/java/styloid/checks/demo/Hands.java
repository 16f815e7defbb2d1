package styloid.checks.demo;

import java.util.List;
import java.util.Map;
import java.util.Set;
import styloid.model.Choice;
import styloid.model.Digit;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.ItemKind;
import styloid.model.Side;
import styloid.spi.TestDefinition;

/** What a sound arm shows, and how to write down what is not sound; all values invented. */
final class Hands {
  static final List<Side> BOTH = List.of(Side.LEFT, Side.RIGHT);
  static final List<Digit> FINGERS = List.of(Digit.INDEX, Digit.MIDDLE, Digit.RING, Digit.LITTLE);

  /** Plausible active motion of a sound arm, in degrees. */
  private static final Map<String, Integer> ARM =
      Map.of(
          "elbow-extension", 0,
          "elbow-flexion", 142,
          "forearm-supination", 84,
          "forearm-pronation", 78,
          "wrist-extension", 70,
          "wrist-flexion", 76,
          "wrist-radial-deviation", 20,
          "wrist-ulnar-deviation", 34);

  private static final Map<String, Integer> FINGER =
      Map.of(
          "mp-extension", 0,
          "mp-flexion", 90,
          "pip-extension", 0,
          "pip-flexion", 102,
          "dip-extension", 0,
          "dip-flexion", 70);

  private static final Map<String, Integer> THUMB =
      Map.of(
          "thumb-mp-extension", 0,
          "thumb-mp-flexion", 56,
          "thumb-ip-extension", 5,
          "thumb-ip-flexion", 78,
          "thumb-palmar-abduction", 45,
          "thumb-radial-abduction", 50);

  /** Motions graded in every demo evaluation of strength. */
  static final List<String> GRADED =
      List.of(
          "elbow-flexion-palm-up",
          "elbow-extension",
          "forearm-supination",
          "forearm-pronation",
          "wrist-flexion",
          "wrist-extension",
          "mp-extension",
          "finger-adduction",
          "thumb-palmar-abduction",
          "thumb-opposition");

  private final Visit visit;

  Hands(Visit visit) {
    this.visit = visit;
  }

  /** A motion that falls short, written before the rest is stamped as full. */
  Hands falls(String motion, Side side, String how, String painSite) {
    visit.choice("screen", motion, side, how);
    visit.choice("screen", motion + "-pain", side, painSite.isEmpty() ? "no" : "yes");
    if (!painSite.isEmpty()) {
      visit.text("screen", motion + "-pain-site", side, painSite);
    }
    return this;
  }

  /** Every motion of the screen that has no answer yet is full. */
  Hands restAsFull() {
    TestDefinition screen = visit.test("screen");
    for (Item item : screen.items()) {
      boolean motion = item.kind() instanceof ItemKind.Choices c && c.codes().contains("full");
      for (ItemKey key : motion ? item.keys(screen.id()) : List.<ItemKey>of()) {
        if (!visit.has(key)) {
          visit.put("screen", item.id().value(), key.side(), key.digit(), 1, new Choice("full"));
        }
      }
    }
    return this;
  }

  /** Active motion of elbow to wrist, but for the motions named. */
  Hands soundArm(Side side, String... but) {
    ARM.keySet().stream()
        .sorted()
        .filter(motion -> !Set.of(but).contains(motion))
        .forEach(motion -> angle(motion, side, Digit.NONE, around(motion, ARM.get(motion))));
    return this;
  }

  /** Active motion of fingers and thumb, but for the digits named. */
  Hands soundDigits(Side side, Digit... but) {
    for (Digit digit : FINGERS) {
      if (!Set.of(but).contains(digit)) {
        FINGER.keySet().stream()
            .sorted()
            .forEach(m -> angle(m, side, digit, around(m, FINGER.get(m))));
      }
    }
    if (!Set.of(but).contains(Digit.THUMB)) {
      THUMB.keySet().stream()
          .sorted()
          .forEach(m -> angle(m, side, Digit.THUMB, around(m, THUMB.get(m))));
    }
    return this;
  }

  private int around(String motion, int degrees) {
    return motion.endsWith("extension") && degrees == 0 ? 0 : visit.about(degrees, 4);
  }

  private Hands angle(String motion, Side side, Digit digit, int degrees) {
    visit.degrees(motion + "-active", side, digit, degrees);
    return this;
  }

  Hands active(String motion, Side side, int degrees) {
    return angle(motion, side, Digit.NONE, degrees);
  }

  Hands passive(String motion, Side side, int degrees) {
    visit.degrees(motion + "-passive", side, Digit.NONE, degrees);
    return this;
  }

  /** One finger's six active angles: flexion and extension of MP, PIP and DIP. */
  Hands finger(
      Side side, Digit digit, int mp, int mpExt, int pip, int pipExt, int dip, int dipExt) {
    return angle("mp-flexion", side, digit, mp)
        .angle("mp-extension", side, digit, mpExt)
        .angle("pip-flexion", side, digit, pip)
        .angle("pip-extension", side, digit, pipExt)
        .angle("dip-flexion", side, digit, dip)
        .angle("dip-extension", side, digit, dipExt);
  }

  Hands passiveFinger(Side side, Digit digit, int pip, int pipExt, int dip, int dipExt) {
    visit.degrees("pip-flexion-passive", side, digit, pip);
    visit.degrees("pip-extension-passive", side, digit, pipExt);
    visit.degrees("dip-flexion-passive", side, digit, dip);
    visit.degrees("dip-extension-passive", side, digit, dipExt);
    return this;
  }

  /** Full range, held against strong resistance. */
  Hands strong(Side side, String motion) {
    return held(side, motion, "strong");
  }

  /** Full range, then what the limb withstood. */
  Hands held(Side side, String motion, String hold) {
    visit.choice("grading", motion + "-range", side, "full");
    visit.choice("grading", motion + "-hold", side, hold);
    return this;
  }

  /** Not full against gravity: what was seen with gravity reduced. */
  Hands weak(Side side, String motion, String range, String reduced) {
    visit.choice("grading", motion + "-range", side, range);
    visit.choice("grading", motion + "-reduced", side, reduced);
    return this;
  }

  /** Not full where the criteria go by range alone. */
  Hands weakDigit(Side side, String motion, String range) {
    visit.choice("grading", motion + "-range", side, range);
    return this;
  }

  /** No motion; whether a contraction was felt. */
  Hands still(Side side, String motion, boolean byGravity, boolean felt) {
    visit.choice("grading", motion + "-range", side, "none");
    if (byGravity) {
      visit.choice("grading", motion + "-reduced", side, "none");
    }
    visit.choice("grading", motion + "-contraction", side, felt ? "yes" : "no");
    return this;
  }

  /** All motions of the list at full strength, but for those named. */
  Hands strongArm(Side side, String... but) {
    GRADED.stream().filter(m -> !Set.of(but).contains(m)).forEach(m -> strong(side, m));
    return this;
  }

  Visit visit() {
    return visit;
  }
}
