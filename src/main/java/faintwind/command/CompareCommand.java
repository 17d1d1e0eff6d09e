package faintwind.command;

import faintwind.calibration.Calibration;
import faintwind.calibration.compare.CompareCalibrations;
import faintwind.calibration.compare.Comparison;
import faintwind.job.PaperFile;
import faintwind.job.bench.BenchFolder;
import faintwind.job.bench.BenchRow;
import faintwind.job.bench.BenchText;
import faintwind.job.bench.CompareBench;
import faintwind.job.bench.ComparedDesigns;
import faintwind.job.bench.ReadComparison;
import faintwind.job.formula.ComparisonPaper;
import faintwind.job.formula.OpenCalibration;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.terminal.ExitCode;
import faintwind.terminal.Terminal;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code faintwind compare EARLIER.json LATER.json [--report FILE.html]}. */
@Command(name = "compare")
public final class CompareCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(index = "0", paramLabel = "EARLIER", descriptionKey = "faintwind.compare.earlier")
  private Path earlier = Path.of("");

  @Parameters(index = "1", paramLabel = "LATER", descriptionKey = "faintwind.compare.later")
  private Path later = Path.of("");

  @Parameters(index = "2..*", paramLabel = "MORE", descriptionKey = "faintwind.compare.more")
  private List<Path> more = List.of();

  @Option(names = "--report", paramLabel = "FILE", descriptionKey = "faintwind.compare.report")
  private @Nullable Path report;

  @Mixin private StandardOptions common = new StandardOptions();

  public CompareCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    List<Path> all = new ArrayList<>(List.of(earlier, later));
    all.addAll(more);
    if (report != null) {
      Optional<Problem> trouble = common.output(report).trouble(all);
      if (trouble.isPresent()) {
        terminal.report(List.of(trouble.get()));
        return ExitCode.USAGE.number();
      }
    }
    if (all.stream().allMatch(BenchFolder::isInstrument)) {
      return sideBySide(all);
    }
    if (!more.isEmpty()) {
      return terminal.misuse(
          Problem.error("bench-compare.instruments", Where.NOWHERE, more.get(0).toString()));
    }
    Checked<Calibration> one = OpenCalibration.read(earlier);
    Checked<Calibration> other = OpenCalibration.read(later);
    if (!(one instanceof Checked.Ok<Calibration> before)
        || !(other instanceof Checked.Ok<Calibration> after)) {
      List<Problem> problems = new ArrayList<>(one.problems());
      problems.addAll(other.problems());
      return terminal.refuse(problems);
    }
    Checked<Comparison> compared = CompareCalibrations.of(before.value(), after.value());
    if (!(compared instanceof Checked.Ok<Comparison> ok)) {
      return terminal.refuse(compared.problems());
    }
    ComparisonPaper paper =
        new ComparisonPaper(before.value(), after.value(), ok.value(), terminal.messages());
    paper.lines().forEach(terminal.out()::println);
    if (report != null) {
      paper.write(report);
    }
    return (ok.value().agrees() ? ExitCode.DONE : ExitCode.LIMIT).number();
  }

  /** Instruments side by side. */
  private int sideBySide(List<Path> instruments) throws IOException {
    Messages words = terminal.messages();
    Checked<CompareBench> read =
        ReadComparison.of(
            instruments, words, OffsetDateTime.now(Clock.system(ZoneId.systemDefault())));
    if (!(read instanceof Checked.Ok<CompareBench> ok)) {
      return terminal.refuse(read.problems());
    }
    CompareBench compared = ok.value();
    List<BenchRow> rows = compared.ones().stream().map(CompareBench.One::row).toList();
    new BenchText(words).lines(rows).forEach(terminal.out()::println);
    compared.missing(words).forEach(terminal.out()::println);
    terminal.say("bench-compare.designs");
    ComparedDesigns designs = compared.designs(words);
    if (designs.rows().isEmpty()) {
      terminal.say("bench-compare.same");
    } else {
      terminal.out().println("  " + String.join("  ", designs.heads()));
    }
    designs.rows().forEach(row -> terminal.out().println("  " + String.join("  ", row)));
    if (report != null) {
      PaperFile.write(report, compared.page(words));
    }
    return ExitCode.DONE.number();
  }
}
