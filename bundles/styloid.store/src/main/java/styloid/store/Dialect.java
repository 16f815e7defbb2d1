package styloid.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;

/** Where the engines differ; all other SQL is of the subset both know. */
interface Dialect {

  /** Layout of a database: how many steps it has taken. */
  int version(Connection connection) throws SQLException;

  /** Notes in the database that it has taken that many steps. */
  String setVersion(int version);

  /** Begins a transaction that only reads. */
  String beginReading();

  /** Begins a transaction with the right to write, so that it cannot be refused half-way. */
  String beginWriting();

  /** Column of a table of heads by which rows stand in the order of storing. */
  String storingOrder();

  /** A suffix of a query which keeps others from changing the rows until the transaction ends. */
  String forUpdate();

  /** Sets a text, whatever characters it is made of. */
  void setText(PreparedStatement statement, int at, String text) throws SQLException;

  /** The text that {@link #setText} has set; null when there is none. */
  String text(Object stored);
}
