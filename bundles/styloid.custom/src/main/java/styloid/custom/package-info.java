/**
 * Tests a clinic declares in a file: the file is read, judged and turned into a test module. Pure
 * but for the classes that watch the clinic's folder and register what lies there.
 */
package styloid.custom;
