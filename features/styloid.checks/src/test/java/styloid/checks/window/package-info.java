/** The assembled suite in a real window without a display, driven by keys from outside. */
package styloid.checks.window;
