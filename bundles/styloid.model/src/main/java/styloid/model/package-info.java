/**
 * What an evaluation of both arms is made of: patient, items, entries, the ledger, its snapshot and
 * the results drawn from it. Plain immutable values; nothing here knows a window, a database, a
 * spreadsheet or a clock.
 */
@org.osgi.annotation.bundle.Export
@org.osgi.annotation.versioning.Version("1.0.0")
package styloid.model;
