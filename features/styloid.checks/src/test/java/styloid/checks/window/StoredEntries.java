package styloid.checks.window;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.LinkedHashMap;
import java.util.Map;
import org.sqlite.SQLiteDataSource;
import styloid.checks.Project;

/** Looks into a store's file past the suite, on a copy, as someone after a crash would. */
final class StoredEntries {
  private static final String QUERY =
      "select test, item, side, trial, value from entry"
          + " where evaluation in (select e.id from evaluation e join patient p on p.id = e.patient"
          + " where p.record_number = ?) order by entered_at, seq";

  private StoredEntries() {}

  /** Every entry of a patient by cell name; of one place, the one entered last. */
  static Map<String, String> of(Path data, String recordNumber) throws IOException, SQLException {
    Path store = data.resolve("demo/styloid.db");
    Path copy = Files.createTempDirectory(data, "copy");
    for (Path part : Project.list(store.getParent())) {
      if (part.getFileName().toString().startsWith("styloid.db")) {
        Files.copy(part, copy.resolve(part.getFileName()), StandardCopyOption.REPLACE_EXISTING);
      }
    }
    // A suite that ran in this process before has pointed the driver at a folder now gone.
    System.setProperty("org.sqlite.tmpdir", copy.toString());
    SQLiteDataSource source = new SQLiteDataSource();
    source.setUrl("jdbc:sqlite:" + copy.resolve("styloid.db"));
    Map<String, String> entries = new LinkedHashMap<>();
    try (Connection connection = source.getConnection();
        PreparedStatement statement = connection.prepareStatement(QUERY)) {
      statement.setString(1, recordNumber);
      try (ResultSet rows = statement.executeQuery()) {
        while (rows.next()) {
          String name =
              rows.getString(1) + "__" + rows.getString(2) + "__" + rows.getString(3) + "__";
          entries.put(name.replace('-', '_') + rows.getInt(4), rows.getString(5));
        }
      }
    }
    return entries;
  }
}
