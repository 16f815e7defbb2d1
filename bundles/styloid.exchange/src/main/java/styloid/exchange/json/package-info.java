/**
 * JSON text read into values that know their place, and decoders that say what is wrong with one,
 * where, and which word was probably meant. Shared by everything that reads a file people write.
 */
@org.osgi.annotation.bundle.Export
@org.osgi.annotation.versioning.Version("1.0.0")
package styloid.exchange.json;
