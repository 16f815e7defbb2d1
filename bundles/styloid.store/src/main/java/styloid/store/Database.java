package styloid.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.DateTimeException;
import java.util.concurrent.locks.ReentrantLock;

/** The open database: one connection, used by one thread at a time. */
abstract class Database {
  private final ReentrantLock lock = new ReentrantLock();
  private Connection connection;
  private Sql sql;

  /** Work on the database. */
  interface Work<T> {
    T on(Sql sql) throws SQLException, StoreException;
  }

  /** A connection to a database of the layout known here; leaves nothing open when it fails. */
  abstract Connection connect() throws StoreException;

  /** What is left to do once the connection is closed. */
  abstract void disconnected();

  abstract Dialect dialect();

  abstract Faults faults();

  final void open() throws StoreException {
    lock.lock();
    try {
      if (sql == null) {
        connection = connect();
        sql = new Sql(connection, dialect());
      }
    } finally {
      lock.unlock();
    }
  }

  /** Runs work that changes nothing and sees the database as it is at one moment. */
  final <T> T read(Work<T> work) throws StoreException {
    return run(dialect().beginReading(), work);
  }

  /** Runs work as one transaction: all of it is on disk when this returns, else nothing. */
  final <T> T write(Work<T> work) throws StoreException {
    return run(dialect().beginWriting(), work);
  }

  private <T> T run(String begin, Work<T> work) throws StoreException {
    lock.lock();
    try {
      Sql open = opened();
      return Transaction.run(connection, begin, () -> work.on(open));
    } catch (SQLException e) {
      throw failed(e);
    } catch (IllegalArgumentException | DateTimeException e) {
      throw faults().damaged("holds a value that cannot be", e);
    } finally {
      lock.unlock();
    }
  }

  /** Whether the connection is of no use any more after this fault, so that another is needed. */
  abstract boolean isLost(SQLException e);

  private StoreException failed(SQLException e) {
    StoreException fault = faults().of(e);
    if (isLost(e)) {
      disconnect();
    }
    return fault;
  }

  private Sql opened() throws StoreException {
    if (sql == null) {
      reconnect();
    }
    return sql;
  }

  /** Called when work comes while nothing is open. */
  void reconnect() throws StoreException {
    throw faults().notOpen();
  }

  void close() {
    lock.lock();
    try {
      disconnect();
    } finally {
      lock.unlock();
    }
  }

  private void disconnect() {
    try {
      if (sql != null) {
        sql.close();
      }
    } catch (SQLException e) {
      warn(e);
    }
    giveUp(connection);
    sql = null;
    connection = null;
  }

  /** Closes a connection, if there is one, and lets go of what belongs to it. */
  final void giveUp(Connection unwanted) {
    try {
      if (unwanted != null) {
        unwanted.close();
      }
    } catch (SQLException e) {
      warn(e);
    }
    disconnected();
  }

  /** What was stored is stored; the next start finds it. */
  private static void warn(SQLException e) {
    System.getLogger(Database.class.getName())
        .log(System.Logger.Level.WARNING, "the records could not be closed in order", e);
  }

  /** For tests that must do to the database what the store never does. */
  final Connection connection() {
    return connection;
  }
}
