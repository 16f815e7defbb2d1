package styloid.grading;

import styloid.grading.Observed.Observation;

/** What observations come to. */
sealed interface Decision permits Decision.Given, Decision.Needs, Decision.Contradiction {

  /** The grade is decided; more observations would not change it. */
  record Given(Grade grade) implements Decision {}

  /** This observation is to be made next. */
  record Needs(Observation next) implements Decision {}

  /** These two cannot both be right. */
  record Contradiction(Observation one, Observation other) implements Decision {}
}
