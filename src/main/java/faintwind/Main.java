package faintwind;

import faintwind.job.World;
import faintwind.job.language.Spoken;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.terminal.DecimalValue;
import faintwind.terminal.ExitCode;
import faintwind.terminal.StandardOutput;
import faintwind.terminal.Terminal;
import faintwind.terminal.UsageWords;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine;

/** Entry point: the command line, and the window where no command is given. */
public final class Main {
  private Main() {}

  /** Runs one command and ends the process with its exit code. */
  public static void main(String[] arguments) {
    Ahead ahead = Ahead.of(arguments);
    Spoken system = Spoken.bySystem(Locale.getDefault(), new AskedLanguage(arguments).folder());
    Terminal terminal =
        Terminal.of(
            System.in,
            new FileOutputStream(FileDescriptor.out),
            new FileOutputStream(FileDescriptor.err),
            system.words());
    terminal.report(system.problems());
    int code = run(terminal, ahead, arguments);
    terminal.out().flush();
    System.exit(code);
  }

  /** Runs one command, in the language it asks for; what it would exit with. */
  public static int run(Terminal given, String... arguments) {
    return run(given, Ahead.ofNothing(), arguments);
  }

  private static int run(Terminal given, Ahead ahead, String... arguments) {
    Optional<Spoken> asked = new AskedLanguage(arguments).spoken();
    Terminal terminal = asked.map(spoken -> given.in(spoken.words())).orElse(given);
    asked.ifPresent(spoken -> terminal.report(spoken.problems()));
    CommandLine line = new CommandLine(new FaintwindCommand(terminal));
    Commands.add(line, terminal, List.of(arguments));
    line.setResourceBundle(terminal.messages().bundle());
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.registerConverter(Double.class, new DecimalValue());
    line.setOut(writer(terminal.out()));
    line.setErr(writer(terminal.err()));
    line.setParameterExceptionHandler((failure, words) -> misused(terminal, failure));
    line.setExecutionExceptionHandler((failure, command, parsed) -> failed(terminal, failure));
    line.setExecutionStrategy(parsed -> begun(ahead, parsed));
    try {
      int code = line.execute(arguments);
      Optional<IOException> lost = terminal.lost();
      boolean told = code == ExitCode.WORLD.number();
      return lost.isPresent() && !told ? failed(terminal, lost.get()) : code;
    } catch (Error broken) {
      return failed(terminal, broken);
    }
  }

  /** The command that was asked for: who misspells one waits for nothing. */
  private static int begun(Ahead ahead, CommandLine.ParseResult parsed) {
    ahead.await();
    return new CommandLine.RunLast().execute(parsed);
  }

  /**
   * What the world did, where it hides behind an error: no folder for fonts while a page is made.
   */
  private static Optional<IOException> world(Throwable failure) {
    for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
      if (cause instanceof IOException world) {
        return Optional.of(world);
      }
      if (cause instanceof UncheckedIOException world) {
        return Optional.ofNullable(world.getCause());
      }
    }
    return Optional.empty();
  }

  private static PrintWriter writer(PrintStream stream) {
    return new PrintWriter(stream, true, StandardCharsets.UTF_8);
  }

  private static int misused(Terminal terminal, CommandLine.ParameterException failure) {
    int code = terminal.misuse(UsageWords.problem(failure));
    terminal.tell("usage.see-help", failure.getCommandLine().getCommandSpec().qualifiedName());
    return code;
  }

  private static int failed(Terminal terminal, Throwable failure) {
    if (failure instanceof StandardOutput.ReaderGoneException) {
      return ExitCode.DONE.number(); // nobody is left to tell anything to
    }
    Optional<IOException> world = world(failure);
    String temporary = System.getProperty("java.io.tmpdir");
    if (world.isPresent() && !Files.isDirectory(Path.of(temporary))) {
      terminal.report(List.of(Problem.error("world.no-temp", Where.NOWHERE, temporary)));
      return ExitCode.WORLD.number();
    }
    if (world.isPresent()) {
      terminal.report(List.of(World.problem(world.get())));
      return ExitCode.WORLD.number();
    }
    if (failure instanceof OutOfMemoryError) {
      terminal.report(List.of(Problem.error("world.memory", Where.NOWHERE, "")));
      return ExitCode.WORLD.number();
    }
    if (failure instanceof InvalidPathException path) {
      return terminal.misuse(Problem.error("usage.path", Where.NOWHERE, path.getInput()));
    }
    // a broken promise of the program itself: say so, with all that is needed to find it
    terminal.tell("terminal.fault", failure.toString());
    failure.printStackTrace(terminal.err());
    return ExitCode.WORLD.number();
  }
}
