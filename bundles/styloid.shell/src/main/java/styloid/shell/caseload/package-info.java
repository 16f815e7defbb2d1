/** Finding patients, keeping their facts and precautions, opening and beginning evaluations. */
package styloid.shell.caseload;
