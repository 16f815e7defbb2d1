package styloid.model;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * What can be pointed at on a limb: a joint, the forearm, the hand as a whole or the whole limb;
 * from proximal to distal, digits from radial to ulnar.
 */
public enum LimbPart {
  LIMB(Region.LIMB),
  SHOULDER(Region.SHOULDER),
  ELBOW(Region.ELBOW),
  FOREARM(Region.FOREARM),
  WRIST(Region.WRIST),
  HAND(Region.HAND),
  THUMB_CMC(Digit.THUMB, DigitJoint.CMC),
  THUMB_MP(Digit.THUMB, DigitJoint.MP),
  THUMB_IP(Digit.THUMB, DigitJoint.IP),
  INDEX_MP(Digit.INDEX, DigitJoint.MP),
  INDEX_PIP(Digit.INDEX, DigitJoint.PIP),
  INDEX_DIP(Digit.INDEX, DigitJoint.DIP),
  MIDDLE_MP(Digit.MIDDLE, DigitJoint.MP),
  MIDDLE_PIP(Digit.MIDDLE, DigitJoint.PIP),
  MIDDLE_DIP(Digit.MIDDLE, DigitJoint.DIP),
  RING_MP(Digit.RING, DigitJoint.MP),
  RING_PIP(Digit.RING, DigitJoint.PIP),
  RING_DIP(Digit.RING, DigitJoint.DIP),
  LITTLE_MP(Digit.LITTLE, DigitJoint.MP),
  LITTLE_PIP(Digit.LITTLE, DigitJoint.PIP),
  LITTLE_DIP(Digit.LITTLE, DigitJoint.DIP);

  private final Region region;
  private final Digit digit;
  private final Optional<DigitJoint> joint;

  LimbPart(Region region) {
    this.region = region;
    this.digit = Digit.NONE;
    this.joint = Optional.empty();
  }

  LimbPart(Digit digit, DigitJoint joint) {
    this.region = digit == Digit.THUMB ? Region.THUMB : Region.FINGERS;
    this.digit = digit;
    this.joint = Optional.of(joint);
  }

  public Region region() {
    return region;
  }

  /** The digit it is of, or {@link Digit#NONE}. */
  public Digit digit() {
    return digit;
  }

  /** Which joint of the digit; empty where it is of no digit. */
  public Optional<DigitJoint> joint() {
    return joint;
  }

  /** Stable word of files and keys, such as {@code index-pip}. */
  public String code() {
    return Codes.of(this);
  }

  /**
   * The parts something is about. Without a digit it is about every digit of the region, without a
   * joint about every joint of the digit; a joint that is no part of its own, such as the
   * carpometacarpal joint of the little finger, belongs to the hand.
   */
  public static Set<LimbPart> of(Region region, Digit digit, Optional<DigitJoint> joint) {
    EnumSet<LimbPart> found = EnumSet.noneOf(LimbPart.class);
    for (LimbPart part : values()) {
      boolean sameDigit = part.digit == Digit.NONE || digit == Digit.NONE || part.digit == digit;
      boolean sameJoint = part.joint.isEmpty() || joint.isEmpty() || part.joint.equals(joint);
      if (part.region == region && sameDigit && sameJoint) {
        found.add(part);
      }
    }
    return found.isEmpty() ? EnumSet.of(HAND) : found;
  }
}
