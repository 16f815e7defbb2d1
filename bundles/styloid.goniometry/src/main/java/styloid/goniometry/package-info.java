/**
 * Goniometry of both limbs: joint planes, the rules over them and the reference tables they use.
 */
package styloid.goniometry;
