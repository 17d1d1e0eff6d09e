package faintwind.terminal;

import faintwind.job.live.TypedSession;
import faintwind.message.Checked;
import faintwind.message.Numerals;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.Semaphore;
import org.jspecify.annotations.Nullable;

/**
 * Asks on standard error, with a beep, for readings that a person types on standard input; an empty
 * line passes one over, q or the end of the input ends the session. From a pipe one line is taken
 * each time it is asked.
 */
public final class TypedDialogue implements TypedSession.Asker {
  private static final int BEEP = 7;

  private final Terminal terminal;
  private final Semaphore asked = new Semaphore(0);

  public TypedDialogue(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public void ask(long number, double time_s) {
    asked.drainPermits();
    asked.release();
    String time = Numerals.places(time_s, 0);
    // not a word of the text: those lose what a terminal obeys
    terminal.err().write(BEEP);
    terminal.tell("listen.ask", number, time);
  }

  /** Takes readings from now on, on a thread of its own. */
  public void begin(TypedSession session) {
    Thread thread = new Thread(() -> take(session), "faintwind-typed");
    thread.setDaemon(true);
    thread.start();
    terminal.tell("listen.typed");
  }

  private void take(TypedSession session) {
    try {
      BufferedReader in =
          new BufferedReader(new InputStreamReader(terminal.in(), StandardCharsets.UTF_8));
      boolean more = true;
      while (more) {
        asked.acquire();
        more = answer(in.readLine(), session);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } finally {
      session.end();
    }
  }

  private boolean answer(@Nullable String line, TypedSession session) {
    if (line == null || line.strip().equalsIgnoreCase("q")) {
      return false;
    }
    if (!line.isBlank()) {
      Checked<Double> entered = session.enter(line);
      terminal.report(entered.problems());
      if (!entered.isOk()) {
        asked.release();
      }
    }
    return true;
  }
}
