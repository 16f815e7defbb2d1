/**
 * The order in which tests still to do cost the patient the fewest changes of position. Pure
 * functions over positions; what the steps are is read from test definitions and the patient
 * context.
 */
@org.osgi.annotation.bundle.Export
@org.osgi.annotation.versioning.Version("1.0.0")
package styloid.plan;
