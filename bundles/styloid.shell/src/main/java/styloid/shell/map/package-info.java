/** The map of both limbs: what each joint's state is, its card, and the way to its steps. */
package styloid.shell.map;
