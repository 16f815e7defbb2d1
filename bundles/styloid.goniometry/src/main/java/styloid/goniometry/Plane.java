package styloid.goniometry;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import styloid.model.Digit;
import styloid.model.Region;

/**
 * One plane of one joint, with the end away from the body's midline or into extension first, as the
 * neutral-zero form is written.
 *
 * @param letter S sagittal, F frontal, T transverse, R rotation
 * @param ends both ends of the arc, or the one that is measured where the other is neutral itself
 */
record Plane(String id, String letter, Region region, List<Motion> ends) {
  Plane {
    ends = List.copyOf(ends);
  }

  boolean hasArc() {
    return ends.size() == 2;
  }

  Set<Digit> digits() {
    return ends.get(0).digits();
  }

  /** Extension, abduction, outward rotation, supination or radial deviation. */
  Motion away() {
    return ends.get(0);
  }

  /** The other end, where there is one. */
  Optional<Motion> toward() {
    return hasArc() ? Optional.of(ends.get(1)) : Optional.empty();
  }
}
