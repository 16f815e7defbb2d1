/**
 * Starts the suite: decides between window and command, runs the framework with the bundles of the
 * start list, and says in plain words what did not start. A plain jar on the class path; knows no
 * part of the suite by name.
 */
package styloid.launcher;
