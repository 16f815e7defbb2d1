package styloid.store;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import styloid.model.Entry;
import styloid.model.EvaluationId;

/**
 * Appends entries without end and says each id on standard output once appending has returned. Told
 * to {@code lie}, it says the ids first and then waits for ever.
 */
final class AppendingChild {
  private AppendingChild() {}

  public static void main(String[] args) throws StoreException, IOException {
    EvaluationId evaluation = EvaluationId.of(args[1]);
    Samples samples = new Samples(UUID.randomUUID().getLeastSignificantBits());
    FileOutputStream out = new FileOutputStream(FileDescriptor.out);
    try (SqlStore store = new SqlStore(Path.of(args[0]))) {
      store.open();
      for (int i = 0; ; i++) {
        List<Entry> batch = batch(samples, i % 3 == 2 ? 4 : 1);
        if (args[2].equals("lie")) {
          say(out, batch);
          System.in.read();
        }
        store.append(evaluation, batch);
        say(out, batch);
      }
    }
  }

  private static List<Entry> batch(Samples samples, int size) {
    ArrayList<Entry> batch = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      batch.add(samples.entry("38.50"));
    }
    return batch;
  }

  /** One write for a batch, not held back by any buffer of this program. */
  private static void say(FileOutputStream out, List<Entry> batch) throws IOException {
    StringBuilder lines = new StringBuilder();
    batch.forEach(entry -> lines.append(entry.id()).append('\n'));
    out.write(lines.toString().getBytes(StandardCharsets.US_ASCII));
  }
}
