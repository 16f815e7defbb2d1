package styloid.goniometry;

import styloid.model.Codes;
import styloid.model.Demand;

/** Who moves the joint: the patient alone, or the therapist. */
enum Mode {
  ACTIVE(Demand.ACTIVE_MOTION),
  PASSIVE(Demand.PASSIVE_MOTION);

  private final Demand demand;

  Mode(Demand demand) {
    this.demand = demand;
  }

  Demand demand() {
    return demand;
  }

  String code() {
    return Codes.of(this);
  }
}
