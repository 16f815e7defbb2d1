package styloid.figure;

import styloid.figure.Subject.PlacedMark;
import styloid.spi.Mark;
import styloid.spi.Mark.Aspect;

/**
 * Where a mark touches the limb.
 *
 * @param bone middle of the bone at that place
 * @param skin the point on the skin
 * @param outward direction out of the limb
 * @param frame directions of the bone there
 */
record Touch(Vec bone, Vec skin, Vec outward, Frame frame) {
  static Touch of(Skeleton skeleton, PlacedMark placed) {
    Mark mark = placed.mark();
    Bone bone = skeleton.bone(mark.segment(), placed.digit());
    Frame frame = bone.frame(mark.along());
    Vec outward =
        mark.aspect() == Aspect.END
            ? frame.distal().times(mark.along() < 0.5 ? -1 : 1)
            : face(frame, mark.aspect());
    Vec centre = bone.at(mark.along());
    double skin = Flesh.skin(mark.segment(), placed.digit(), mark.along(), mark.aspect());
    return new Touch(centre, centre.plus(outward.times(skin)), outward, frame);
  }

  static Vec face(Frame frame, Aspect aspect) {
    return switch (aspect) {
      case VOLAR -> frame.volar();
      case DORSAL -> frame.volar().times(-1);
      case RADIAL -> frame.radial();
      case ULNAR -> frame.radial().times(-1);
      case END -> frame.distal();
    };
  }

  /** Positive where the onlooker sees it, 1 straight on. */
  double facing(Camera camera) {
    return outward.dot(camera.toViewer());
  }
}
