/**
 * Writes a report as a spreadsheet workbook. First the whole book is planned as plain data ({@link
 * styloid.workbook.Book}), then written, then read back by another reader and compared with the
 * plan, and only then moved into place.
 */
package styloid.workbook;
