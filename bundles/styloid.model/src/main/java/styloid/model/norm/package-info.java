/**
 * Norm tables read from CSV, looking a person up in them, the normal curve and the few statistics
 * results are made of. Pure; nothing here knows a file system or a clock.
 */
@org.osgi.annotation.bundle.Export
@org.osgi.annotation.versioning.Version("1.0.0")
package styloid.model.norm;
