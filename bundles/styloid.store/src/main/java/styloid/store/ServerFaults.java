package styloid.store;

import java.sql.SQLException;

/** Faults of a clinic's server and of the line to it. */
final class ServerFaults implements Faults {
  private final String address;

  ServerFaults(String address) {
    this.address = address;
  }

  /** SQLSTATE classes: PostgreSQL documentation, appendix A. */
  @Override
  public StoreException of(SQLException e) {
    String state = e.getSQLState() == null ? "" : e.getSQLState();
    if (gone(e)) {
      return new StoreException(
          StoreException.Cause.UNREACHABLE,
          "The clinic's server "
              + address
              + " cannot be reached. What was to be stored is not"
              + " stored there. Check the network and the server, then try again.",
          e);
    } else if (state.startsWith("28")) {
      return new StoreException(
          StoreException.Cause.OTHER,
          "The clinic's server "
              + address
              + " does not let this user in. Check user and password"
              + " with whoever runs the server.",
          e);
    } else if (state.startsWith("23")) {
      return new StoreException(
          StoreException.Cause.CONFLICT,
          "What was to be stored contradicts the records on " + address + ". Nothing was changed.",
          e);
    } else if (state.equals("53100")) {
      return new StoreException(
          StoreException.Cause.DISK_FULL,
          "The disk of the clinic's server "
              + address
              + " is full. What was to be stored is not"
              + " stored. Tell whoever runs the server.",
          e);
    } else if (state.equals("25006") || state.equals("42501")) {
      return new StoreException(
          StoreException.Cause.READ_ONLY,
          "The clinic's server "
              + address
              + " lets this user write nothing. Tell whoever runs the"
              + " server.",
          e);
    }
    return new StoreException(
        StoreException.Cause.OTHER,
        "The records on "
            + address
            + " could not be read or written ("
            + state
            + "). Nothing was"
            + " changed. Try again, or tell whoever runs the server.",
        e);
  }

  /** Whether the line is cut or the server going down, so that another connection is needed. */
  static boolean gone(SQLException e) {
    String state = e.getSQLState() == null ? "" : e.getSQLState();
    return state.startsWith("08") || state.startsWith("57P");
  }

  @Override
  public StoreException damaged(String how, Exception e) {
    return new StoreException(
        StoreException.Cause.DAMAGED,
        "The records on "
            + address
            + " are damaged: the database "
            + how
            + ". Nothing was"
            + " changed. Tell whoever runs the server.",
        e);
  }

  @Override
  public StoreException newer(int found, int known) {
    return new StoreException(
        StoreException.Cause.NEWER_VERSION,
        "The records on %s were written by a newer version (layout %d, this one knows %d)."
                .formatted(address, found, known)
            + " Nothing was changed. Start the newer version.",
        null);
  }

  @Override
  public StoreException notOpen() {
    return new StoreException(
        StoreException.Cause.OTHER, "The records on " + address + " are not open.", null);
  }
}
