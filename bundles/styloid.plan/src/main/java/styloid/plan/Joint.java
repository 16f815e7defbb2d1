package styloid.plan;

import styloid.model.Region;
import styloid.model.Side;
import styloid.model.TestId;

/** A joint of one limb, as one test sees it. */
record Joint(TestId test, Region region, Side side) {}
