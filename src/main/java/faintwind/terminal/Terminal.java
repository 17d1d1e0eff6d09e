package faintwind.terminal;

import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * The standard streams and the words: how the command line speaks.
 *
 * @param in standard input
 * @param raw standard output for rows of data: tells of a write that fails
 * @param out standard output for words
 * @param err standard error
 * @param messages the words
 */
public record Terminal(
    InputStream in, OutputStream raw, PrintStream out, PrintStream err, Messages messages) {

  public static Terminal of(InputStream in, OutputStream out, OutputStream err, Messages messages) {
    StandardOutput rows = new StandardOutput(out);
    return new Terminal(in, rows, new WordStream(rows), new WordStream(err), messages);
  }

  /** The same streams with other words. */
  public Terminal in(Messages words) {
    return new Terminal(in, raw, out, err, words);
  }

  /** Why words that were said did not arrive, such as a disk that is full; not a closed pipe. */
  public Optional<IOException> lost() {
    out.flush();
    return raw instanceof StandardOutput rows ? rows.lost() : Optional.empty();
  }

  /** The words of what another program reads: the same in every language. */
  public static Messages forPrograms() {
    return Messages.of(Locale.ENGLISH);
  }

  /** A line on standard output. */
  public void say(String key, Object... arguments) {
    out.println(messages.text(key, arguments));
  }

  /** A line on standard error that is neither warning nor error: a summary. */
  public void tell(String key, Object... arguments) {
    err.println(messages.text(key, arguments));
  }

  /** Every problem or note on standard error, one a line. */
  public void report(List<Problem> problems) {
    for (Problem problem : problems) {
      err.println(problem.isError() ? error(problem) : warning(problem));
    }
    err.flush();
  }

  /** The same, with the exit code that goes with it: {@link ExitCode#of}. */
  public int refuse(List<Problem> problems) {
    report(problems);
    return ExitCode.of(problems).number();
  }

  /** Ends with why it was refused; else with its notes and what is said of it. */
  public <T> int end(Checked<T> done, Consumer<T> said) {
    if (!(done instanceof Checked.Ok<T> ok)) {
      return refuse(done.problems());
    }
    report(ok.notes());
    said.accept(ok.value());
    return ExitCode.DONE.number();
  }

  /** A problem of the command line. */
  public int misuse(Problem problem) {
    report(List.of(problem));
    return ExitCode.USAGE.number();
  }

  private String error(Problem problem) {
    return messages.text("terminal.error", messages.line(problem));
  }

  /** {@code warning: RUN: text}, with the place in the input after the text. */
  private String warning(Problem problem) {
    Optional<String> run = problem.where().run();
    String text = messages.note(problem);
    return run.isPresent()
        ? messages.text("terminal.warning-run", run.get(), text)
        : messages.text("terminal.warning", text);
  }
}
