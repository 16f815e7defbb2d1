/** The invented demo clinic: where the files in demo-data come from, and the check that they do. */
package styloid.checks.demo;
