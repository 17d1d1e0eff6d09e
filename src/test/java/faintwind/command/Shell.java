package faintwind.command;

import faintwind.Main;
import faintwind.message.Messages;
import faintwind.terminal.Terminal;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.stream.Stream;

/** Commands as they are typed, and what they say. */
public final class Shell {
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  /** Runs one command; its exit code. */
  public int run(Object... arguments) {
    out.reset();
    err.reset();
    Terminal terminal =
        Terminal.of(new ByteArrayInputStream(new byte[0]), out, err, Messages.of(Locale.ENGLISH));
    return Main.run(terminal, Stream.of(arguments).map(Object::toString).toArray(String[]::new));
  }

  /** What the last command said on standard output. */
  public String out() {
    return out.toString(StandardCharsets.UTF_8);
  }

  /** What the last command said, on both streams. */
  public String said() {
    return out.toString(StandardCharsets.UTF_8) + err.toString(StandardCharsets.UTF_8);
  }
}
