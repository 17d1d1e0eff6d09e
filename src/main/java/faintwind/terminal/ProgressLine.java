package faintwind.terminal;

import faintwind.job.JobWatch;

/**
 * Long work told on one line of standard error that renews itself; only where a person watches.
 * Ctrl+C ends the process: every job writes whole files or none.
 */
public final class ProgressLine implements JobWatch {
  /** Set by the launcher; what {@code System.console()} says of this differs between JDKs. */
  private static final String ON_SCREEN = "faintwind.screen";

  private static final long BETWEEN_ns = 300_000_000L;
  private static final int WIDTH = 60;

  private final Terminal terminal;
  private long last_ns = System.nanoTime() - BETWEEN_ns;

  private ProgressLine(Terminal terminal) {
    this.terminal = terminal;
  }

  /** A line where the launcher saw that standard error is a screen, silence elsewhere. */
  public static JobWatch on(Terminal terminal) {
    return Boolean.getBoolean(ON_SCREEN) ? new ProgressLine(terminal) : JobWatch.NOBODY;
  }

  @Override
  public synchronized void progress(String stage, long done, long total) {
    boolean finished = total > 0 && done >= total;
    if (!finished && System.nanoTime() - last_ns < BETWEEN_ns) {
      return;
    }
    last_ns = System.nanoTime();
    String what = terminal.messages().text("stage." + stage);
    String line = total > 1 ? terminal.messages().text("progress.of", done, total, what) : what;
    terminal.err().print("\r" + (line + " ".repeat(WIDTH)).substring(0, WIDTH) + "\r");
    terminal.err().flush();
  }

  @Override
  public boolean cancelled() {
    return false;
  }
}
