package styloid.session;

import java.util.concurrent.ScheduledExecutorService;
import styloid.model.EvaluationRecord;
import styloid.model.PatientContext;
import styloid.store.PatientStore;

/** An open evaluation with what brings it to disk. */
record Sitting(Desk desk, Saver saver) {

  /** Opens an evaluation; the listeners hear whenever something was stored, or was not. */
  static Sitting at(
      PatientContext context,
      EvaluationRecord record,
      PatientStore into,
      ScheduledExecutorService storing,
      Listeners listeners) {
    Desk desk = Records.desk(context, record);
    Saver.Watcher watcher = desk.watcher(() -> listeners.tell(Session.Change.EVALUATION));
    return new Sitting(desk, new Saver(record.evaluation().id(), into, storing, watcher));
  }

  /** Whether nothing is being stored, or cannot be. */
  boolean atRest() {
    return saver.idle() || saver.failing();
  }
}
