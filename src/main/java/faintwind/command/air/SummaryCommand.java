package faintwind.command.air;

import faintwind.calibration.field.FieldSummary;
import faintwind.calibration.field.StretchMean;
import faintwind.command.IntoInstruments;
import faintwind.command.OptionRange;
import faintwind.command.StandardOptions;
import faintwind.job.air.ResultFile;
import faintwind.job.air.Summary;
import faintwind.job.air.SummaryPicture;
import faintwind.job.air.SummaryTable;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event.FileRole;
import faintwind.terminal.ExitCode;
import faintwind.terminal.Terminal;
import faintwind.terminal.WhoOption;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code faintwind summary SPEEDS.csv [--out SUMMARY.csv] [--picture FILE.svg|FILE.png]}. */
@Command(name = "summary")
public final class SummaryCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "SPEEDS.csv", descriptionKey = "faintwind.summary.speeds")
  private Path speeds = Path.of("");

  @Option(
      names = "--limit",
      paramLabel = "M_S",
      split = ",",
      descriptionKey = "faintwind.summary.limit")
  private List<Double> limits_m_s = new ArrayList<>();

  @Option(names = "--calm", paramLabel = "M_S", descriptionKey = "faintwind.summary.calm")
  private double calm_m_s = FieldSummary.Wanted.CALM_M_S;

  @Option(names = "--out", paramLabel = "SUMMARY.csv", descriptionKey = "faintwind.summary.out")
  private @Nullable Path out;

  @Option(names = "--picture", paramLabel = "FILE", descriptionKey = "faintwind.summary.picture")
  private @Nullable Path picture;

  @Option(names = "--json", descriptionKey = "json")
  private boolean json;

  @Mixin private WhoOption who = new WhoOption();

  @Mixin private SourceOptions source = new SourceOptions();

  @Mixin private StandardOptions common = new StandardOptions();

  public SummaryCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    List<Problem> misuse = misuse();
    if (!misuse.isEmpty()) {
      terminal.report(misuse);
      return ExitCode.USAGE.number();
    }
    Checked<Summary> worked =
        source
            .open(Optional.of(speeds))
            .then(from -> Summary.of(from, speeds.toString(), limits_m_s, calm_m_s));
    if (!(worked instanceof Checked.Ok<Summary> ok)) {
      return terminal.refuse(worked.problems());
    }
    List<Problem> shut = new IntoInstruments(who.name()).trouble(targets());
    if (!shut.isEmpty()) {
      return terminal.refuse(shut);
    }
    terminal.report(ok.notes());
    if (json) {
      terminal.out().print(ok.value().json());
    } else {
      ok.value().lines(terminal.messages()).forEach(terminal.out()::println);
    }
    terminal.out().flush();
    List<Problem> notEntered = keep(ok.value());
    return notEntered.isEmpty() ? ExitCode.DONE.number() : terminal.refuse(notEntered);
  }

  private List<Path> targets() {
    return Stream.of(out, picture).flatMap(Stream::ofNullable).toList();
  }

  /** Writes what was asked for; what lies with an instrument is entered in its journal. */
  private List<Problem> keep(Summary summary) throws IOException {
    Map<Path, FileRole> written = new LinkedHashMap<>();
    if (out != null) {
      ResultFile.write(out, SummaryTable.of(summary));
      written.put(out, FileRole.SUMMARY);
    }
    if (picture != null) {
      SummaryPicture.write(picture, summary, terminal.messages());
      written.put(picture, FileRole.SUMMARY);
    }
    written.keySet().forEach(file -> terminal.tell("air.written", file.toString()));
    return new IntoInstruments(who.name()).enter(written);
  }

  private List<Problem> misuse() throws IOException {
    List<Problem> problems = new ArrayList<>(source.misuse(Optional.empty()));
    OptionRange.trouble("--calm", calm_m_s, StretchMean.SPEED).ifPresent(problems::add);
    for (double limit_m_s : limits_m_s) {
      OptionRange.trouble("--limit", limit_m_s, StretchMean.SPEED).ifPresent(problems::add);
    }
    if (picture != null && !SummaryPicture.isNamed(picture)) {
      problems.add(Problem.error("usage.picture", Where.NOWHERE, picture.toString()));
    }
    List<Path> inputs = Stream.concat(Stream.of(speeds), source.calibration().stream()).toList();
    for (Path target : targets()) {
      common.output(target).trouble(inputs).ifPresent(problems::add);
    }
    return problems;
  }
}
