package faintwind.terminal;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import java.util.Optional;

/**
 * Standard output for rows of data. A reader that wants no more, such as {@code head}, closes its
 * end of the pipe; that is told apart from a disk that fails.
 */
public final class StandardOutput extends OutputStream {
  private final OutputStream out;
  private Optional<IOException> lost = Optional.empty();

  StandardOutput(OutputStream out) {
    this.out = out;
  }

  /** Whoever read the output wants no more of it. */
  public static final class ReaderGoneException extends IOException {
    private static final long serialVersionUID = 1L;

    ReaderGoneException(IOException cause) {
      super(cause);
    }
  }

  @Override
  public void write(int b) throws IOException {
    write(new byte[] {(byte) b}, 0, 1);
  }

  @Override
  public void write(byte[] bytes, int from, int count) throws IOException {
    try {
      out.write(bytes, from, count);
    } catch (IOException failure) {
      throw judged(failure);
    }
  }

  @Override
  public void flush() throws IOException {
    try {
      out.flush();
    } catch (IOException failure) {
      throw judged(failure);
    }
  }

  @Override
  public void close() throws IOException {
    out.close();
  }

  /** What kept something from being written that a reader still wanted. */
  Optional<IOException> lost() {
    return lost;
  }

  /** Java says it in words only: "Broken pipe", on Windows "The pipe is being closed". */
  private IOException judged(IOException failure) {
    String said = String.valueOf(failure.getMessage()).toLowerCase(Locale.ROOT);
    if (said.contains("pipe")) {
      return new ReaderGoneException(failure);
    }
    lost = lost.or(() -> Optional.of(failure));
    return failure;
  }
}
