/** Contract tests every module must pass, and seeded evaluations to try them on. Never shipped. */
@org.osgi.annotation.bundle.Export
@org.osgi.annotation.versioning.Version("1.0.0")
package styloid.testkit;
