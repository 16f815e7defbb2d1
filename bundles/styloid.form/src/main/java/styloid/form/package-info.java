/**
 * The one drawer of every test: fields, walk and keys made from a test's items alone. Knows the
 * model, the definitions and JavaFX; what is recorded goes through {@link styloid.form.FormPort}.
 */
@org.osgi.annotation.bundle.Export
@org.osgi.annotation.versioning.Version("1.0.0")
package styloid.form;
