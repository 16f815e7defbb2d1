/** The test order in the window: shown, opened step by step, followed. */
package styloid.shell.order;
