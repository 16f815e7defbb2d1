/** What every screen of the window stands on; it knows no screen. */
package styloid.shell.frame;
