/** Makes the runnable folder of the suite at build time; not part of it. */
package styloid.suite;
