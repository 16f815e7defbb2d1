package styloid.store;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;

/** A real PostgreSQL for as long as the tests of this program run; a database for each test. */
final class PostgresServer {
  private static final AtomicInteger NUMBER = new AtomicInteger();
  private static EmbeddedPostgres running;

  private PostgresServer() {}

  private static synchronized EmbeddedPostgres running() throws IOException {
    if (running == null) {
      running = EmbeddedPostgres.builder().start();
      Runtime.getRuntime().addShutdownHook(new Thread(PostgresServer::stop));
    }
    return running;
  }

  private static void stop() {
    try {
      running.close();
    } catch (IOException e) {
      throw new IllegalStateException("the server of the tests does not stop", e);
    }
  }

  static int port() throws IOException {
    return running().getPort();
  }

  /** The name of an empty database. */
  static String newDatabase() throws IOException, SQLException {
    String name = "clinic" + NUMBER.incrementAndGet();
    try (Connection connection = running().getPostgresDatabase().getConnection();
        Statement statement = connection.createStatement()) {
      // Another order of letters than the one of the embedded file must not show.
      statement.execute("CREATE DATABASE " + name);
    }
    return name;
  }

  static Server at(int port, String database) {
    return new Server(
        "jdbc:postgresql://localhost:" + port + "/" + database,
        Optional.of("postgres"),
        Optional.of("postgres"));
  }

  static SqlStore store(Server server) {
    return new SqlStore(new ServerDatabase(server, Migrations.server()));
  }
}
