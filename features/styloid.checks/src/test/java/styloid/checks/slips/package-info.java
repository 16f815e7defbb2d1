/**
 * A corpus of made-up evaluations with one slip each, and what the questions about slips find in
 * it. The generator knows the published norms and nothing of the detectors.
 */
package styloid.checks.slips;
