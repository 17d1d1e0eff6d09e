package faintwind.command;

import java.security.Permission;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/**
 * Hears of every port, connection, look-up of a name and program that this process opens or starts,
 * whichever of the platform's ways it takes, and lets it happen.
 */
@SuppressWarnings("removal") // the platform of this project still has it, and nothing else sees all
final class NetworkWatch extends SecurityManager {
  private final List<String> seen = new CopyOnWriteArrayList<>();

  interface Action {
    void run() throws Exception;
  }

  /** What was opened meanwhile. */
  static List<String> during(Action action) throws Exception {
    NetworkWatch watch = new NetworkWatch();
    System.setSecurityManager(watch);
    try {
      action.run();
    } finally {
      System.setSecurityManager(null);
    }
    return new ArrayList<>(watch.seen);
  }

  @Override
  public void checkConnect(String host, int port) {
    if (port < 0 && isOfFonts()) {
      return;
    }
    seen.add(port < 0 ? "look up " + host : "connect " + host + ":" + port);
  }

  /** The platform's fonts ask for this computer's own name, to name a file of theirs by it. */
  private static boolean isOfFonts() {
    return StackWalker.getInstance()
        .walk(all -> all.anyMatch(frame -> frame.getClassName().startsWith("sun.font.")));
  }

  @Override
  public void checkConnect(String host, int port, Object context) {
    checkConnect(host, port);
  }

  @Override
  public void checkListen(int port) {
    seen.add("listen " + port);
  }

  @Override
  public void checkAccept(String host, int port) {
    seen.add("accept " + host + ":" + port);
  }

  @Override
  public void checkExec(String command) {
    seen.add("start " + command);
  }

  @Override
  public void checkPermission(Permission permission) {
    // everything else is none of its business
  }

  @Override
  public void checkPermission(Permission permission, Object context) {
    // everything else is none of its business
  }
}
