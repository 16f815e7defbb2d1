/**
 * What a test module is: its definition as data, its results as pure functions, its sheets as data.
 * A module needs this package and {@code styloid.model} and nothing else.
 */
@org.osgi.annotation.bundle.Export
@org.osgi.annotation.versioning.Version("1.0.0")
package styloid.spi;
