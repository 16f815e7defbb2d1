/**
 * The headless commands, on the same session as the window: check, results, workbook, modules and
 * import. Files are judged whole before anything is written or stored.
 */
package styloid.command;
