package faintwind.command.pool;

import faintwind.command.record.InstrumentOptions;
import faintwind.job.bench.BenchFolder;
import faintwind.job.formula.Calibrate;
import faintwind.job.pool.KeepPooled;
import faintwind.job.pool.PoolInstruments;
import faintwind.job.pool.PoolInstruments.Done;
import faintwind.job.pool.PoolInstruments.Made;
import faintwind.job.pool.PoolText;
import faintwind.job.record.AtInstrument;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.terminal.ExitCode;
import faintwind.terminal.ProgressLine;
import faintwind.terminal.Terminal;
import faintwind.terminal.VersionText;
import faintwind.terminal.WhoOption;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code faintwind pool FOLDER...}: the instruments of a class, fitted together. */
@Command(
    name = "pool",
    mixinStandardHelpOptions = true,
    versionProvider = VersionText.class,
    resourceBundle = "faintwind.messages")
public final class PoolCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "FOLDER", arity = "1..*", descriptionKey = "faintwind.pool.folders")
  private List<Path> folders = List.of();

  @Mixin private WhoOption who = new WhoOption();

  @Option(names = "--look", descriptionKey = "faintwind.pool.look")
  private boolean look;

  @Option(names = "--json", descriptionKey = "json")
  private boolean json;

  public PoolCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    Calibrate calibrate =
        new Calibrate(
            Clock.system(ZoneId.systemDefault()),
            terminal.messages(),
            new Calibrate.Settings(Optional.empty(), 0, OptionalDouble.empty()));
    List<Path> instruments = instruments();
    KeepPooled keep =
        new KeepPooled(
            folder -> new AtInstrument(folder, InstrumentOptions.clock(), who.name()), calibrate);
    List<Problem> shut = look ? List.of() : keep.trouble(instruments);
    if (!shut.isEmpty()) {
      return terminal.refuse(shut);
    }
    Checked<Done> pooled =
        new PoolInstruments(calibrate).of(instruments, ProgressLine.on(terminal));
    if (!(pooled instanceof Checked.Ok<Done> ok)) {
      return terminal.refuse(pooled.problems());
    }
    return told(ok.value(), keep);
  }

  /** Folders that hold instruments stand for all of them. */
  private List<Path> instruments() throws IOException {
    List<Path> instruments = new ArrayList<>();
    for (Path folder : folders) {
      instruments.addAll(
          BenchFolder.is(folder) ? BenchFolder.instruments(folder) : List.of(folder));
    }
    return instruments.stream().distinct().toList();
  }

  private int told(Done done, KeepPooled keep) throws IOException {
    Map<Path, Path> files = new LinkedHashMap<>();
    List<Problem> problems = new ArrayList<>();
    for (Made made : look ? List.<Made>of() : done.made()) {
      Checked<Path> kept = keep.keep(made);
      kept.map(file -> files.put(made.folder(), file));
      problems.addAll(kept.isOk() ? List.of() : kept.problems());
    }
    done.leftOut().values().forEach(problems::addAll);
    PoolText text = new PoolText(terminal.messages());
    if (json) {
      terminal.out().print(text.json(done, files));
    } else {
      text.lines(done, files).forEach(terminal.out()::println);
    }
    terminal.out().flush();
    terminal.report(problems);
    boolean all =
        problems.isEmpty() && done.made().stream().allMatch(made -> made.standsOut().isEmpty());
    return (all ? ExitCode.DONE : ExitCode.LIMIT).number();
  }
}
