package faintwind.device;

import java.io.Closeable;
import java.io.IOException;

/**
 * Where readings come from while they are made. One thread asks for what comes next; any thread may
 * close.
 */
public interface SampleSource extends Closeable {
  /**
   * Waits for what comes next. After the end, and after {@link #close}, it is {@link
   * SourceEvent.Ended} again and again.
   *
   * @throws IOException where the source cannot be had at all: port missing or busy, host unknown,
   *     no such file. A source that was there once and went away is waited for instead.
   * @throws InterruptedException where the waiting thread is told to stop
   */
  SourceEvent next() throws IOException, InterruptedException;

  /** Ends it; a thread that waits in {@link #next} is let go. */
  @Override
  void close() throws IOException;
}
