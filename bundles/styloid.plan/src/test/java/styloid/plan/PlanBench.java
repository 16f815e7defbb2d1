package styloid.plan;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import styloid.plan.PlanStep.State;

/** Times planning in processor time, so that other work on the machine does not count. */
public final class PlanBench {
  private static final int ROUNDS = 60;
  private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

  private PlanBench() {}

  public static void main(String[] args) {
    run("full evaluation, nothing found yet", 0, 0);
    run("full evaluation, 10 % painful", 0, 10);
    run("full evaluation, 30 % gravity reduced, 10 % painful", 30, 10);
    run("full evaluation, all gravity reduced, 10 % painful", 100, 10);
  }

  private static void run(String what, int reduced, int painful) {
    Planner planner = new Planner();
    long[] plans = new long[ROUNDS];
    long[] replans = new long[ROUNDS];
    Plan plan = null;
    for (int round = 0; round < ROUNDS; round++) {
      List<PlanStep> steps = FullEvaluation.steps(round % 10, reduced, painful);
      long start = CLOCK.getCurrentThreadCpuTime();
      plan = planner.plan(steps);
      plans[round] = CLOCK.getCurrentThreadCpuTime() - start;
      ArrayList<PlanStep> later = new ArrayList<>(plan.steps());
      later.set(0, later.get(0).withState(State.DONE));
      later.set(1, later.get(1).withState(State.IN_PROGRESS));
      start = CLOCK.getCurrentThreadCpuTime();
      planner.replan(plan, later);
      replans[round] = CLOCK.getCurrentThreadCpuTime() - start;
    }
    System.out.printf(
        "%s: %d steps, %d changes (plain %d), proven %b%n",
        what, plan.order().size(), plan.changes().total(), plan.plain().total(), plan.proven());
    report("plan", plans);
    report("replan", replans);
  }

  private static void report(String what, long[] nanos) {
    System.out.printf("  %s: first %.1f ms", what, nanos[0] / 1e6);
    long[] warm = Arrays.copyOfRange(nanos, nanos.length / 2, nanos.length);
    Arrays.sort(warm);
    System.out.printf(
        ", warm median %.2f ms, warm worst %.2f ms%n",
        warm[warm.length / 2] / 1e6, warm[warm.length - 1] / 1e6);
  }
}
