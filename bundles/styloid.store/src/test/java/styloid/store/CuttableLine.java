package styloid.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.ArrayList;
import java.util.List;

/** A line to a server on this machine that is cut when told to. */
final class CuttableLine implements AutoCloseable {
  private final ServerSocket door;
  private final int target;
  private final List<Socket> open = new ArrayList<>();
  private int messagesLeft = Integer.MAX_VALUE;
  private volatile boolean afterSending;
  private boolean cut;

  CuttableLine(int target) throws IOException {
    this.target = target;
    this.door = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
    start(this::accept);
  }

  int port() {
    return door.getLocalPort();
  }

  /**
   * From now on lets so many messages pass to the server, then closes everything, either before the
   * next is sent on or after it while the answer is not.
   */
  synchronized void cutAtMessage(int number, boolean afterSendingIt) {
    messagesLeft = number;
    afterSending = afterSendingIt;
  }

  synchronized boolean isCut() {
    return cut;
  }

  synchronized void heal() {
    messagesLeft = Integer.MAX_VALUE;
    cut = false;
  }

  private static void start(Runnable work) {
    Thread thread = new Thread(work, "line");
    thread.setDaemon(true);
    thread.start();
  }

  private void accept() {
    while (!door.isClosed()) {
      try {
        Socket near = door.accept();
        Socket far = new Socket(InetAddress.getLoopbackAddress(), target);
        near.setTcpNoDelay(true);
        far.setTcpNoDelay(true);
        synchronized (this) {
          open.add(near);
          open.add(far);
        }
        start(() -> pass(near, far, true));
        start(() -> pass(far, near, false));
      } catch (IOException e) {
        // The door was closed, or the server is gone: whoever connects next finds out.
        return;
      }
    }
  }

  /** One way of one connection; its end is the end of both ways, and of no other connection. */
  private void pass(Socket from, Socket to, boolean toServer) {
    byte[] bytes = new byte[65536];
    try (from;
        to) {
      InputStream in = from.getInputStream();
      OutputStream out = to.getOutputStream();
      for (int n = in.read(bytes); n >= 0; n = in.read(bytes)) {
        boolean last = toServer && isLast();
        if (!last || afterSending) {
          out.write(bytes, 0, n);
          out.flush();
        }
        if (last) {
          return;
        }
      }
    } catch (IOException e) {
      // The other way has ended this connection.
      return;
    }
  }

  private synchronized boolean isLast() {
    if (messagesLeft == Integer.MAX_VALUE) {
      return false;
    }
    if (messagesLeft == 0) {
      cut = true;
      return true;
    }
    messagesLeft--;
    return false;
  }

  @Override
  public synchronized void close() throws IOException {
    door.close();
    for (Socket socket : open) {
      socket.close();
    }
  }
}
