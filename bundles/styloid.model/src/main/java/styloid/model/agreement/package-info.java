/**
 * How well raters agree: intraclass correlation for measures, weighted kappa for classes, each with
 * an interval, and the standard error of measurement with what follows from it. Pure; knows no test
 * and no patient.
 */
@org.osgi.annotation.bundle.Export
@org.osgi.annotation.versioning.Version("1.0.0")
package styloid.model.agreement;
