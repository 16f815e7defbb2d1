/** The window: caseload, patient, evaluation, start report. Nothing outside uses its classes. */
package styloid.shell;
