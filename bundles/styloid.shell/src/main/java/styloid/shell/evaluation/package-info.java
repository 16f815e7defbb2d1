/** The open evaluation: navigation, form, what stands beside it, export. */
package styloid.shell.evaluation;
