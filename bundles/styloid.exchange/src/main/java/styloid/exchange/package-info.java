/** The evaluation file: JSON that holds exactly what the store holds, read with line and path. */
@org.osgi.annotation.bundle.Export
@org.osgi.annotation.versioning.Version("1.0.0")
package styloid.exchange;
