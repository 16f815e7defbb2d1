package styloid.figure;

import java.util.Objects;
import java.util.OptionalDouble;
import styloid.spi.Sweep;

/**
 * A measured angle to be drawn.
 *
 * @param degrees as measured
 * @param shortOf degrees it is short of the chosen reference; zero or less when it is not; empty
 *     where no reference fits
 */
public record Reading(Sweep sweep, double degrees, OptionalDouble shortOf) {
  public Reading {
    Objects.requireNonNull(sweep, "sweep");
    Objects.requireNonNull(shortOf, "shortOf");
  }
}
