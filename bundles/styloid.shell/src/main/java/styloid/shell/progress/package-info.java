/** How a measure moved over the visits: the series, and its drawing. */
package styloid.shell.progress;
