/** How the window looks and sounds to its user: colours, size, density, language, pedals. */
package styloid.shell.look;
