/**
 * Keeps patients and evaluations for good. What {@link styloid.store.PatientStore} has accepted is
 * on disk when the call returns.
 */
@org.osgi.annotation.bundle.Export
@org.osgi.annotation.versioning.Version("1.0.0")
package styloid.store;
