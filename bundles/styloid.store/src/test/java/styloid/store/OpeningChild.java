package styloid.store;

import java.nio.file.Path;

/** Tries to open a store and says what came of it. */
final class OpeningChild {
  private OpeningChild() {}

  public static void main(String[] args) {
    try (SqlStore store = new SqlStore(Path.of(args[0]))) {
      store.open();
      print("OPEN");
    } catch (StoreException e) {
      print(e.why().name());
    }
  }

  private static void print(String word) {
    new java.io.PrintStream(new java.io.FileOutputStream(java.io.FileDescriptor.out), true)
        .println(word);
  }
}
