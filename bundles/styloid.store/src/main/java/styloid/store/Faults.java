package styloid.store;

import java.sql.SQLException;

/** Puts faults of an engine into words: what, where, what to do. */
interface Faults {
  StoreException of(SQLException e);

  /** What is stored cannot be as it is; {@code how} goes on from "the file" or "the database". */
  StoreException damaged(String how, Exception e);

  StoreException newer(int found, int known);

  StoreException notOpen();
}
