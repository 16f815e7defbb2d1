/**
 * Draws a limb in a pose with its marks from the data of a test. The geometry is plain Java, in
 * metres of an adult of middle height; only {@link styloid.figure.FigureView} knows the window.
 */
@org.osgi.annotation.bundle.Export
@org.osgi.annotation.versioning.Version("1.0.0")
package styloid.figure;
