package faintwind;

import faintwind.command.CalibrateCommand;
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
import faintwind.command.bench.CheckCommand;
import faintwind.command.bench.ListCommand;
import faintwind.command.lesson.ClassCommand;
import faintwind.command.pool.PoolCommand;
import faintwind.command.record.AcceptCommand;
import faintwind.command.record.CorrectCommand;
import faintwind.command.record.NewCommand;
import faintwind.command.record.NoteCommand;
import faintwind.command.record.PutInForceCommand;
import faintwind.command.record.ReadingCommand;
import faintwind.command.record.StepCommand;
import faintwind.terminal.Terminal;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import picocli.CommandLine;

/** Every command by its name, in the order the help lists them. */
final class Commands {
  private record Named(String name, Function<Terminal, Object> maker) {}

  private static final List<Named> COMMANDS =
      List.of(
          new Named("calibrate", CalibrateCommand::new),
          new Named("pool", PoolCommand::new),
          new Named("convert", ConvertCommand::new),
          new Named("export", ExportCommand::new),
          new Named("summary", SummaryCommand::new),
          new Named("survey", SurveyCommand::new),
          new Named("opening", OpeningCommand::new),
          new Named("flow", FlowCommand::new),
          new Named("check", CheckCommand::new),
          new Named("size", SizeCommand::new),
          new Named("clicks", ClicksCommand::new),
          new Named("report", ReportCommand::new),
          new Named("list", ListCommand::new),
          new Named("class", ClassCommand::new),
          new Named("steps", StepsCommand::new),
          new Named("plan", PlanCommand::new),
          new Named("corrections", CorrectionsCommand::new),
          new Named("listen", ListenCommand::new),
          new Named("demo", DemoCommand::new),
          new Named("new", NewCommand::new),
          new Named("note", NoteCommand::new),
          new Named("reading", ReadingCommand::new),
          new Named("step", StepCommand::new),
          new Named("correct", CorrectCommand::new),
          new Named("put-in-force", PutInForceCommand::new),
          new Named("compare", CompareCommand::new),
          new Named("recheck", RecheckCommand::new),
          new Named("accept", AcceptCommand::new),
          new Named("pack", PackCommand::new),
          new Named("unpack", UnpackCommand::new),
          new Named("example", ExampleCommand::new),
          new Named("draft-profile", DraftProfileCommand::new),
          new Named("completion", CompletionCommand::new),
          new Named("man", ManCommand::new));

  /** They speak of all the others. */
  private static final Set<String> OF_ALL = Set.of("completion", "man");

  private Commands() {}

  /**
   * Adds the command that the first word names, none where the window is asked for, or all of them
   * where no word names one: reading the options and texts of all takes longer than most short
   * commands themselves.
   */
  static void add(CommandLine line, Terminal terminal, List<String> arguments) {
    if (AskedLanguage.asksForTheWindow(arguments)) {
      return;
    }
    String first = arguments.isEmpty() ? "" : arguments.get(0);
    List<Named> one =
        COMMANDS.stream().filter(c -> c.name.equals(first) && !OF_ALL.contains(first)).toList();
    for (Named command : one.isEmpty() ? COMMANDS : one) {
      line.addSubcommand(command.maker.apply(terminal));
    }
    if (one.isEmpty()) {
      line.addSubcommand(new CommandLine.HelpCommand());
    }
  }
}
