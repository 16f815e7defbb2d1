package styloid.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.osgi.framework.Bundle;
import styloid.checks.faulty.AllocatesWithoutEnd;
import styloid.checks.faulty.CallsItself;
import styloid.checks.faulty.CannotSayWhatItIs;
import styloid.checks.faulty.ClaimsAnothersId;
import styloid.checks.faulty.FailsToLink;
import styloid.checks.faulty.GivesAMillionResults;
import styloid.checks.faulty.GivesNothing;
import styloid.checks.faulty.HoldsNull;
import styloid.checks.faulty.LoopsForEver;
import styloid.checks.faulty.LoopsWhenAskedWhatItIs;
import styloid.checks.faulty.NeverResolves;
import styloid.checks.faulty.Plain;
import styloid.checks.faulty.StartsThreads;
import styloid.checks.faulty.ThrowsEverywhere;
import styloid.checks.faulty.ThrowsWhenMade;

/** Faulty modules in a real Felix beside the built-in ones: the suite goes on and says so. */
class FaultyModuleTest {
  @TempDir Path data;

  private SuiteUnderTest.Ran resultsBeside(Class<?>... modules) throws Exception {
    Path[] jars = new Path[modules.length];
    for (int i = 0; i < modules.length; i++) {
      jars[i] = FaultyBundle.pack(data, modules[i]);
    }
    try (SuiteUnderTest suite = SuiteUnderTest.start(data, jars)) {
      return suite.run("results", demoFile());
    }
  }

  private static String demoFile() {
    return Project.suite().resolve("demo/demo-001.json").toString();
  }

  private static void assertSaysAndGoesOn(SuiteUnderTest.Ran ran, String fault) {
    assertTrue(
        ran.out().contains("\"mean-power\"") || ran.out().contains("\"power-mean\""),
        "grip results are gone");
    assertTrue(ran.out().contains(fault) || ran.err().contains(fault), ran::err);
  }

  @Test
  void aSoundModuleFromOutsideIsNoFault() throws Exception {
    SuiteUnderTest.Ran ran = resultsBeside(Plain.class);
    assertEquals(0, ran.code(), ran::err);
    assertTrue(ran.out().contains("faulty-plain"), "the packing itself works");
  }

  @Test
  void aModuleThatFailsToLinkIsNamed() throws Exception {
    SuiteUnderTest.Ran ran = resultsBeside(FailsToLink.class);
    assertSaysAndGoesOn(ran, "faulty-failstolink");
    assertNotEquals(0, ran.code());
  }

  @Test
  void aModuleThatLoopsForEverIsNamed() throws Exception {
    assertSaysAndGoesOn(resultsBeside(LoopsForEver.class), "faulty-loopsforever");
  }

  @Test
  void aModuleThatGivesNothingIsNamed() throws Exception {
    assertSaysAndGoesOn(resultsBeside(GivesNothing.class), "faulty-givesnothing");
  }

  @Test
  void aModuleThatCannotSayWhatItIsIsNamed() throws Exception {
    assertSaysAndGoesOn(
        resultsBeside(CannotSayWhatItIs.class), CannotSayWhatItIs.class.getSimpleName());
  }

  @ParameterizedTest
  @ValueSource(
      classes = {
        ThrowsEverywhere.class,
        CallsItself.class,
        AllocatesWithoutEnd.class,
        GivesAMillionResults.class,
        HoldsNull.class
      })
  void whateverAModuleDoesItIsNamedWithACodeAndTheOthersWork(Class<?> module) throws Exception {
    SuiteUnderTest.Ran ran = resultsBeside(module, Plain.class);
    String id = "faulty-" + module.getSimpleName().toLowerCase(Locale.ROOT);
    assertSaysAndGoesOn(ran, id);
    assertTrue(
        ran.err().lines().anyMatch(l -> l.contains(id) && l.matches(".*\\[[0-9A-F]{4}]")),
        ran::err);
    assertTrue(ran.out().contains("\"faulty-plain\""), "the module beside it is gone");
    Path fresh = Files.createDirectories(data.resolve("again"));
    try (SuiteUnderTest again = SuiteUnderTest.start(fresh)) {
      assertEquals(0, again.run("results", demoFile()).code(), "a restart without it works");
    }
  }

  @Test
  void oneThatStartsThreadsHoldsNobodyUp() throws Exception {
    SuiteUnderTest.Ran ran = resultsBeside(StartsThreads.class);
    assertEquals(0, ran.code(), ran::err);
  }

  @Test
  void oneThatNeverSaysWhatItIsIsNamed() throws Exception {
    assertSaysAndGoesOn(resultsBeside(LoopsWhenAskedWhatItIs.class), "LoopsWhenAskedWhatItIs");
  }

  @Test
  void oneThatClaimsAnothersIdIsRefusedAndTheOtherKept() throws Exception {
    SuiteUnderTest.Ran ran = resultsBeside(ClaimsAnothersId.class);
    assertSaysAndGoesOn(ran, "claims the id grip");
    assertFalse(ran.out().contains("\"version\" : \"9.0\""), "the claim was believed");
  }

  @Test
  void oneThatThrowsWhenMadeLeavesTheOthersAtWork() throws Exception {
    SuiteUnderTest.Ran ran = resultsBeside(ThrowsWhenMade.class, Plain.class);
    assertTrue(ran.out().contains("faulty-plain"), ran::err);
  }

  @Test
  void oneThatDoesNotResolveLeavesTheOthersAtWork() throws Exception {
    Path jar = FaultyBundle.pack(data, NeverResolves.class, "nowhere.to.be.found");
    try (SuiteUnderTest suite = SuiteUnderTest.start(data, jar)) {
      assertEquals(Bundle.INSTALLED, suite.bundle("faulty.NeverResolves").getState());
      assertEquals(0, suite.run("results", demoFile()).code());
    }
  }
}
