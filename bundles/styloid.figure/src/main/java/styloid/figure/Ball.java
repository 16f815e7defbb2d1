package styloid.figure;

/** A ball in space, in metres: what all flesh is made of. */
record Ball(Vec centre, double radius) {}
