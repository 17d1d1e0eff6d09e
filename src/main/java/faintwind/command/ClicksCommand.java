package faintwind.command;

import faintwind.calibration.beat.BeatTimes;
import faintwind.job.turntable.FillTurns;
import faintwind.job.turntable.FindTurns;
import faintwind.message.Checked;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event.FileRole;
import faintwind.terminal.ExitCode;
import faintwind.terminal.Terminal;
import faintwind.terminal.WhoOption;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * {@code faintwind clicks SOUND.wav [--table RUNS.csv --run NAME --out NEW.csv]}: counts the turns
 * of one spin in a sound recording.
 */
@Command(name = "clicks")
public final class ClicksCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "SOUND.wav", descriptionKey = "faintwind.clicks.sound")
  private Path sound = Path.of("");

  @Option(names = "--per-turn", paramLabel = "N", descriptionKey = "faintwind.clicks.per-turn")
  private int perTurn = 1;

  @Option(names = "--period-s", paramLabel = "S", descriptionKey = "faintwind.clicks.period-s")
  private @Nullable Double period_s;

  @Option(names = "--begins-s", paramLabel = "S", descriptionKey = "faintwind.clicks.begins-s")
  private @Nullable Double begins_s;

  @Option(names = "--table", paramLabel = "RUNS.csv", descriptionKey = "faintwind.clicks.table")
  private @Nullable Path table;

  @Option(names = "--run", paramLabel = "NAME", descriptionKey = "faintwind.clicks.run")
  private @Nullable String run;

  @Option(names = "--out", paramLabel = "NEW.csv", descriptionKey = "faintwind.clicks.out")
  private @Nullable Path out;

  @Mixin private WhoOption who = new WhoOption();

  @Mixin private StandardOptions common = new StandardOptions();

  public ClicksCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    List<Problem> misuse = misuse();
    if (!misuse.isEmpty()) {
      terminal.report(misuse);
      return ExitCode.USAGE.number();
    }
    IntoInstruments instruments = new IntoInstruments(who.name());
    Map<Path, FileRole> written = out == null ? Map.of() : Map.of(out, FileRole.RUNS_TABLE);
    List<Problem> shut = instruments.trouble(written.keySet());
    if (!shut.isEmpty()) {
      return terminal.refuse(shut);
    }
    Checked<BeatTimes> found = FindTurns.in(sound, number(period_s), perTurn);
    if (!(found instanceof Checked.Ok<BeatTimes> ok)) {
      return terminal.refuse(found.problems());
    }
    terminal.report(ok.notes());
    BeatTimes.Turning turning = ok.value().turning();
    Map<String, OptionalDouble> cells = FillTurns.cells(turning, number(begins_s));
    if (table != null && run != null && out != null) {
      Checked<Path> filled = FillTurns.write(table, run, cells, out);
      if (!filled.isOk()) {
        return terminal.refuse(filled.problems());
      }
    }
    say(turning, cells);
    List<Problem> notEntered = instruments.enter(written);
    return notEntered.isEmpty() ? ExitCode.DONE.number() : terminal.refuse(notEntered);
  }

  /** The cells of a runs table on standard output, in words on standard error. */
  private void say(BeatTimes.Turning turning, Map<String, OptionalDouble> cells) {
    terminal.out().println(String.join(",", cells.keySet()));
    terminal
        .out()
        .println(
            cells.values().stream()
                .map(v -> v.isPresent() ? Numerals.digits(v.getAsDouble(), 9) : "")
                .collect(Collectors.joining(",")));
    double share = turning.time_s().u().orElse(0) / turning.time_s().value();
    terminal.tell(
        "clicks.found",
        turning.turns(),
        Numerals.places(turning.first_s(), 2),
        Numerals.places(turning.last_s(), 2),
        Numerals.digits(60 * turning.turns() / turning.time_s().value(), 5),
        Numerals.digits(200 * share, 2));
  }

  private static OptionalDouble number(@Nullable Double value) {
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  private List<Problem> misuse() throws IOException {
    List<Problem> problems = new ArrayList<>();
    OptionRange.trouble("--period-s", period_s, FindTurns.PERIOD).ifPresent(problems::add);
    OptionRange.trouble("--per-turn", perTurn, FindTurns.PER_TURN).ifPresent(problems::add);
    if (begins_s != null && !Double.isFinite(begins_s)) {
      problems.add(Problem.error("beat.not-finite", Where.NOWHERE.atColumn("--begins-s"), ""));
    }
    long said = Stream.of(table, run, out).filter(o -> o != null).count();
    if (said != 0 && said != 3) {
      problems.add(Problem.error("usage.clicks-table", Where.NOWHERE, ""));
    }
    if (out != null) {
      List<Path> inputs = table == null ? List.of(sound) : List.of(sound, table);
      common.output(out).trouble(inputs).ifPresent(problems::add);
    }
    return problems;
  }
}
