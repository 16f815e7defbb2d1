package styloid.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.osgi.framework.BundleException;

class FaultTest {
  private final Words words = new Words();

  @Test
  void aMissingPackageIsNamedInPlainWords() {
    Fault fault =
        Fault.ofBundle(
            "styloid.grip",
            new BundleException(
                "Unable to resolve styloid.grip [4](R 4.0): missing requirement [styloid.grip"
                    + " [4](R 4.0)] osgi.wiring.package; (&(osgi.wiring.package=styloid.spi)"
                    + "(version>=1.0.0)(!(version>=2.0.0))) Unresolved requirements: [...]"));
    assertEquals(
        "styloid.grip did not start: it needs styloid.spi, which no other part provides.",
        fault.text(words));
    assertFalse(fault.ofWindow());
  }

  @Test
  void theDeepestMissingPackageIsTheCause() {
    Fault fault =
        Fault.ofBundle(
            "styloid.shell",
            new BundleException(
                "Unable to resolve styloid.shell [9](R 9.0): missing requirement [styloid.shell"
                    + " [9](R 9.0)] osgi.wiring.package; (osgi.wiring.package=styloid.form) [caused"
                    + " by: Unable to resolve styloid.form [8](R 8.0): missing requirement"
                    + " [styloid.form [8](R 8.0)] osgi.wiring.package;"
                    + " (osgi.wiring.package=javafx.scene)]"));
    assertEquals("javafx.scene", fault.detail());
    assertTrue(fault.ofWindow());
  }

  @Test
  void anythingElseTellsTheDeepestCause() {
    BundleException outer =
        new BundleException("Activator start error", new IllegalStateException("no room"));
    assertEquals(
        "styloid.store did not start: java.lang.IllegalStateException: no room",
        Fault.ofBundle("styloid.store", outer).text(words));
  }

  @Test
  void aComponentThatWaitsNamesWhatItWaitsFor() {
    assertEquals(
        "styloid.shell.Shell waits for styloid.session.Session, which no other part provides.",
        Fault.waitsFor("styloid.shell.Shell", "styloid.session.Session").text(words));
  }

  @Test
  void waitingForTheWindowIsKnownAsSuch() {
    assertTrue(Fault.waitsFor("styloid.shell.Shell", "javafx.stage.Stage").ofWindow());
  }

  @Test
  void aListedBundleThatIsNotThereIsNamed() {
    assertEquals(
        "styloid.grip-0.1.0.jar is on the start list but not in the folder \"bundles\". Put the"
            + " suite in place anew.",
        Fault.fileMissing("styloid.grip-0.1.0.jar").text(words));
  }
}
