package faintwind;

import faintwind.command.CalibrateCommand;
import faintwind.command.CheckCommand;
import faintwind.command.ClicksCommand;
import faintwind.command.CompareCommand;
import faintwind.command.CompletionCommand;
import faintwind.command.ConvertCommand;
import faintwind.command.CorrectionsCommand;
import faintwind.command.DemoCommand;
import faintwind.command.ExportCommand;
import faintwind.command.ListenCommand;
import faintwind.command.ManCommand;
import faintwind.command.PackCommand;
import faintwind.command.PlanCommand;
import faintwind.command.RecheckCommand;
import faintwind.command.ReportCommand;
import faintwind.command.SizeCommand;
import faintwind.command.StepsCommand;
import faintwind.command.UnpackCommand;
import faintwind.command.air.FlowCommand;
import faintwind.command.air.OpeningCommand;
import faintwind.command.air.SummaryCommand;
import faintwind.command.air.SurveyCommand;
import faintwind.command.begin.DraftProfileCommand;
import faintwind.command.begin.ExampleCommand;
import faintwind.command.record.AcceptCommand;
import faintwind.command.record.CorrectCommand;
import faintwind.command.record.NewCommand;
import faintwind.command.record.NoteCommand;
import faintwind.command.record.PutInForceCommand;
import faintwind.command.record.ReadingCommand;
import faintwind.command.record.StepCommand;
import faintwind.job.World;
import faintwind.message.Messages;
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
    Terminal terminal =
        Terminal.of(
            System.in,
            new FileOutputStream(FileDescriptor.out),
            new FileOutputStream(FileDescriptor.err),
            Messages.of(Locale.getDefault()));
    int code = run(terminal, arguments);
    terminal.out().flush();
    System.exit(code);
  }

  /** Runs one command; what it would exit with. */
  public static int run(Terminal terminal, String... arguments) {
    CommandLine line = new CommandLine(new FaintwindCommand(terminal));
    line.addSubcommand(new CalibrateCommand(terminal));
    line.addSubcommand(new ConvertCommand(terminal));
    line.addSubcommand(new ExportCommand(terminal));
    line.addSubcommand(new SummaryCommand(terminal));
    line.addSubcommand(new SurveyCommand(terminal));
    line.addSubcommand(new OpeningCommand(terminal));
    line.addSubcommand(new FlowCommand(terminal));
    line.addSubcommand(new CheckCommand(terminal));
    line.addSubcommand(new SizeCommand(terminal));
    line.addSubcommand(new ReportCommand(terminal));
    line.addSubcommand(new StepsCommand(terminal));
    line.addSubcommand(new PlanCommand(terminal));
    line.addSubcommand(new ClicksCommand(terminal));
    line.addSubcommand(new CorrectionsCommand(terminal));
    line.addSubcommand(new ListenCommand(terminal));
    line.addSubcommand(new DemoCommand(terminal));
    line.addSubcommand(new NewCommand(terminal));
    line.addSubcommand(new NoteCommand(terminal));
    line.addSubcommand(new ReadingCommand(terminal));
    line.addSubcommand(new StepCommand(terminal));
    line.addSubcommand(new CorrectCommand(terminal));
    line.addSubcommand(new PutInForceCommand(terminal));
    line.addSubcommand(new CompareCommand(terminal));
    line.addSubcommand(new RecheckCommand(terminal));
    line.addSubcommand(new AcceptCommand(terminal));
    line.addSubcommand(new PackCommand(terminal));
    line.addSubcommand(new UnpackCommand(terminal));
    line.addSubcommand(new ExampleCommand(terminal));
    line.addSubcommand(new DraftProfileCommand(terminal));
    line.addSubcommand(new CompletionCommand(terminal));
    line.addSubcommand(new ManCommand(terminal));
    line.addSubcommand(new CommandLine.HelpCommand());
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.registerConverter(Double.class, new DecimalValue());
    line.setOut(writer(terminal.out()));
    line.setErr(writer(terminal.err()));
    line.setParameterExceptionHandler((failure, words) -> misused(terminal, failure));
    line.setExecutionExceptionHandler((failure, command, parsed) -> failed(terminal, failure));
    try {
      return line.execute(arguments);
    } catch (Error broken) {
      return failed(terminal, broken);
    }
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
        return Optional.of(world.getCause());
      }
    }
    return Optional.empty();
  }

  private static java.io.PrintWriter writer(PrintStream stream) {
    return new java.io.PrintWriter(stream, true, StandardCharsets.UTF_8);
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
