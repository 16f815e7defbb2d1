/** Help where the hand is: keys of the place, how the window looks, the guided evaluation. */
package styloid.shell.help;
