/** Grip and pinch: what is recorded, and every result drawn from it, with norms beside. */
package styloid.grip;
