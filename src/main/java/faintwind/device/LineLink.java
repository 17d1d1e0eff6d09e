package faintwind.device;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;

/** A way to bytes that come as lines: a serial port, a connection, packets. */
interface LineLink {
  /**
   * Opens it.
   *
   * @throws IOException where it cannot be had: missing, busy, refused, not allowed
   */
  Open open() throws IOException;

  /** Whether the first line after opening may be the end of a torn one. */
  SourceEvent.Wholeness firstLine();

  /** An open link. Closing it lets a thread go that waits for its bytes. */
  interface Open extends Closeable {
    /** The bytes; their end, or a failure, means that the other end is gone. */
    InputStream bytes() throws IOException;
  }
}
