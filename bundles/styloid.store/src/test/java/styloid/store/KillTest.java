package styloid.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import styloid.model.Entry;
import styloid.model.Evaluation;
import styloid.model.Patient;

/** A program killed at any moment (SIGKILL where there are signals) loses nothing acknowledged. */
class KillTest {
  private static final int KILLS = 50;

  @TempDir Path folder;
  private final Samples samples = new Samples(5);
  private Evaluation evaluation;

  @BeforeEach
  void beginAnEvaluation() throws StoreException {
    Patient patient = samples.patient();
    evaluation = samples.evaluation(patient.id(), "2026-03-02");
    try (SqlStore store = new SqlStore(folder)) {
      store.open();
      store.savePatient(patient, List.of());
      store.begin(evaluation, List.of());
    }
  }

  @Test
  void everyAcknowledgedEntryIsThereAfterFiftyKillsAtRandomMoments() throws Exception {
    Random random = new Random(20260302);
    ArrayList<String> acknowledged = new ArrayList<>();
    int unacknowledged = 0;
    for (int kill = 0; kill < KILLS; kill++) {
      acknowledged.addAll(killedAfter(random.nextInt(12), random.nextInt(6_000_000), "append"));
      List<String> stored = stored();
      assertEquals(List.of(), missing(acknowledged, stored), "after kill " + kill);
      unacknowledged = stored.size() - acknowledged.size();
      assertEquals(
          acknowledged, stored.stream().filter(Set.copyOf(acknowledged)::contains).toList());
    }
    assertTrue(acknowledged.size() >= KILLS, acknowledged.size() + " acknowledged");
    assertTrue(unacknowledged < KILLS * 4, unacknowledged + " stored but not acknowledged");
  }

  /** The control: a program that acknowledges before it has stored is caught. */
  @Test
  void anEntryAcknowledgedTooEarlyIsFoundMissing() throws Exception {
    List<String> acknowledged = killedAfter(1, 0, "lie");
    assertEquals(1, acknowledged.size());
    assertEquals(acknowledged, missing(acknowledged, stored()));
  }

  /**
   * Kills a program some time after it has acknowledged some entries; gives all it acknowledged.
   */
  private List<String> killedAfter(int acknowledgements, long nanos, String how)
      throws IOException, InterruptedException {
    Process child =
        ChildJvm.start(AppendingChild.class, folder.toString(), evaluation.id().toString(), how);
    ArrayList<String> said = new ArrayList<>();
    try (BufferedReader out =
        new BufferedReader(
            new InputStreamReader(child.getInputStream(), StandardCharsets.US_ASCII))) {
      while (said.size() < acknowledgements) {
        String line = out.readLine();
        assertTrue(line != null, "the program ended by itself");
        said.add(line);
      }
      LockSupport.parkNanos(nanos);
      // Not through Process, which would also close the pipe with what is still in it.
      child.toHandle().destroyForcibly();
      for (String line = out.readLine(); line != null; line = out.readLine()) {
        said.add(line);
      }
    }
    child.waitFor();
    // A line cut off by the kill acknowledges nothing.
    said.removeIf(line -> line.length() != 36);
    return said;
  }

  private List<String> stored() throws StoreException {
    try (SqlStore store = new SqlStore(folder)) {
      store.open();
      List<Entry> entries = store.evaluation(evaluation.id()).orElseThrow().ledger().entries();
      return entries.stream().map(entry -> entry.id().toString()).toList();
    }
  }

  private static List<String> missing(List<String> acknowledged, List<String> stored) {
    HashSet<String> there = new HashSet<>(stored);
    return acknowledged.stream().filter(id -> !there.contains(id)).toList();
  }
}
