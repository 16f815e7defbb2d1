/**
 * Suspicions of a slip in a number just typed: a unit mistaken, a decimal point, two digits
 * swapped, the other limb's value. Pure, and the same for every test: they see the item's range,
 * what stands beside the value and the visits before, and know nothing of any module.
 */
@org.osgi.annotation.bundle.Export
@org.osgi.annotation.versioning.Version("1.0.0")
package styloid.spi.slip;
