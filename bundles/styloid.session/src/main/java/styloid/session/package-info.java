/**
 * The one patient context, shared by all: the open evaluation, what was recorded, what follows, and
 * what could not be stored or calculated. Knows no window.
 */
@org.osgi.annotation.bundle.Export
@org.osgi.annotation.versioning.Version("1.0.0")
package styloid.session;
