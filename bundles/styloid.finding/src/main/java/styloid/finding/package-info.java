/**
 * Statements drawn across tests: what a lag or a joint limits, where two tests contradict each
 * other, where weak grades gather. Each is for the therapist's judgement and names what it rests
 * on; none is a diagnosis. Nothing here knows a test but by the names of its items and results.
 */
package styloid.finding;
