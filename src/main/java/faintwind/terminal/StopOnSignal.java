package faintwind.terminal;

import faintwind.calibration.live.LiveRow;
import faintwind.job.live.LiveListener;
import faintwind.job.live.LiveNews;
import faintwind.job.live.LiveRecording;
import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.OptionalDouble;
import java.util.Timer;
import java.util.TimerTask;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Ends a recording cleanly on Ctrl+C, on a request to end the process, or after a while: the row
 * that is being written is finished, and the process ends with the exit code of the command.
 */
public final class StopOnSignal implements Closeable {
  private static final int PATIENCE_S = 10;

  private final LiveRecording recording;
  private final CompletableFuture<Integer> code = new CompletableFuture<>();
  private final Thread atEnd = new Thread(this::endOfProcess, "faintwind-stop");
  private final Timer timer = new Timer("faintwind-timer", true);

  private StopOnSignal(LiveRecording recording) {
    this.recording = recording;
  }

  public static StopOnSignal of(LiveRecording recording) {
    StopOnSignal stop = new StopOnSignal(recording);
    Runtime.getRuntime().addShutdownHook(stop.atEnd);
    return stop;
  }

  /** Ends it after so many seconds of the record, or of waiting, whichever is over first. */
  public LiveListener after(double seconds) {
    timer.schedule(
        new TimerTask() {
          @Override
          public void run() {
            stop();
          }
        },
        Math.round(seconds * 1000));
    return new LiveListener() {
      private OptionalDouble first_s = OptionalDouble.empty();

      @Override
      public void row(LiveRow row) {
        first_s = first_s.isPresent() ? first_s : OptionalDouble.of(row.time_s());
        if (row.time_s() - first_s.getAsDouble() >= seconds) {
          stop();
        }
      }

      @Override
      public void happened(LiveNews news) {}
    };
  }

  /** What the process ends with if it was told to end. */
  public void endsWith(int exitCode) {
    code.complete(exitCode);
  }

  private void stop() {
    try {
      recording.stop();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void endOfProcess() {
    if (code.isDone()) {
      return;
    }
    stop();
    try {
      // the thread of the command cannot end the process any more: it is ending
      Runtime.getRuntime().halt(code.get(PATIENCE_S, TimeUnit.SECONDS));
    } catch (ExecutionException | TimeoutException e) {
      Runtime.getRuntime().halt(ExitCode.WORLD.number());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public void close() {
    code.complete(ExitCode.WORLD.number());
    timer.cancel();
    try {
      Runtime.getRuntime().removeShutdownHook(atEnd);
    } catch (IllegalStateException e) {
      // the process is ending: the hook is running and does the rest
      timer.cancel();
    }
  }
}
