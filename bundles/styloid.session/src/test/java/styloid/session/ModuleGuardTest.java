package styloid.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class ModuleGuardTest {
  private final ModuleGuard guard = new ModuleGuard(200);
  private final CountDownLatch release = new CountDownLatch(1);

  @AfterEach
  void end() {
    release.countDown();
    guard.close();
  }

  private ModuleFault fault(String module, Callable<Object> call) {
    ModuleGuard.Answer<Object> answer = guard.call(module, "results", call);
    assertTrue(answer.failed());
    return answer.fault();
  }

  @Test
  void handsOverWhatTheModuleGives() {
    assertEquals("seven", guard.call("m", "results", () -> "seven").value());
  }

  @Test
  void anExceptionBecomesAFault() {
    ModuleFault fault =
        fault(
            "m",
            () -> {
              throw new IllegalStateException("boom");
            });
    assertTrue(fault.reason().contains("IllegalStateException"));
    assertFalse(fault.reason().contains("boom"), "a module's text may hold patient data");
  }

  @Test
  void aLinkageErrorBecomesAFault() {
    ModuleFault fault =
        fault(
            "m",
            () -> {
              throw new NoSuchMethodError("gone");
            });
    assertTrue(fault.reason().contains("another version"));
  }

  @Test
  void endlessRecursionBecomesAFault() {
    assertTrue(fault("m", this::recurse).reason().contains("without end"));
  }

  private Object recurse() {
    return recurse() + "x";
  }

  @Test
  void nothingGivenBackBecomesAFault() {
    assertTrue(fault("m", () -> null).reason().contains("nothing"));
  }

  @Test
  void aCallThatHangsIsAbandonedAndTheNextOneAnswered() {
    ModuleFault fault =
        fault(
            "slow",
            () -> {
              while (release.getCount() > 0) {
                Thread.onSpinWait();
              }
              return "late";
            });
    assertTrue(fault.reason().contains("200 ms"));
    assertEquals("next", guard.call("quick", "results", () -> "next").value());
  }

  @Test
  void threeFaultsMuteUntilSomeoneTriesAgain() {
    Callable<Object> broken =
        () -> {
          throw new IllegalStateException();
        };
    assertFalse(fault("m", broken).muted());
    assertFalse(fault("m", broken).muted());
    assertTrue(fault("m", broken).muted());
    assertEquals("MUTED", fault("m", () -> "fine").code());
    guard.forgive("m");
    assertEquals("fine", guard.call("m", "results", () -> "fine").value());
  }

  @Test
  void theSameFaultGivesTheSameCodeAndAnotherPlaceAnother() {
    String first = ModuleGuard.code(at("a.B", "c"));
    assertEquals(first, ModuleGuard.code(at("a.B", "c")));
    assertNotEquals(first, ModuleGuard.code(at("a.B", "d")));
    assertEquals(4, first.length());
  }

  private static Throwable at(String type, String method) {
    IllegalStateException fault = new IllegalStateException();
    fault.setStackTrace(new StackTraceElement[] {new StackTraceElement(type, method, "B.java", 1)});
    return fault;
  }

  @Test
  void aModuleSetAsideIsNotCalledUntilSomeoneTriesAgain() {
    try (ModuleGuard guard = new ModuleGuard(1000)) {
      guard.mute("one");
      assertTrue(guard.call("one", "results", () -> "called").failed());
      assertEquals("called", guard.call("other", "results", () -> "called").value());
      guard.forgive("one");
      assertEquals("called", guard.call("one", "results", () -> "called").value());
    }
  }
}
