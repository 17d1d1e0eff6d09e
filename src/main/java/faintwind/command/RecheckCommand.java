package faintwind.command;

import faintwind.calibration.Calibration;
import faintwind.calibration.compare.Recheck;
import faintwind.calibration.run.Run;
import faintwind.command.record.InstrumentOptions;
import faintwind.job.formula.OpenCalibration;
import faintwind.job.formula.RecheckRuns;
import faintwind.job.record.AtInstrument;
import faintwind.job.record.InstrumentView;
import faintwind.message.Checked;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.terminal.ExitCode;
import faintwind.terminal.Terminal;
import faintwind.terminal.VersionText;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code faintwind recheck CALIBRATION.json|FOLDER RUNS.csv}: ten minutes at the arm. */
@Command(
    name = "recheck",
    mixinStandardHelpOptions = true,
    versionProvider = VersionText.class,
    resourceBundle = "faintwind.messages")
public final class RecheckCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(
      index = "0",
      paramLabel = "CALIBRATION",
      descriptionKey = "faintwind.recheck.calibration")
  private Path calibration = Path.of("");

  @Parameters(index = "1", paramLabel = "RUNS.csv", descriptionKey = "faintwind.recheck.runs")
  private Path runs = Path.of("");

  public RecheckCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  /** The file that was named, or what is in force of the instrument that was named. */
  private Checked<Calibration> calibration() throws IOException {
    if (!AtInstrument.is(calibration)) {
      return OpenCalibration.read(calibration);
    }
    Checked<InstrumentView> opened = InstrumentView.begun(calibration);
    if (!(opened instanceof Checked.Ok<InstrumentView> ok)) {
      return Checked.refused(opened.problems());
    }
    OffsetDateTime now = OffsetDateTime.now(InstrumentOptions.clock());
    Optional<String> file = ok.value().state().calibrationInForce(now);
    String name = calibration.toString();
    return file.isPresent()
        ? OpenCalibration.read(calibration.resolve(file.get()))
        : Checked.refused(Problem.error("convert.none-in-force", Where.file(name), name));
  }

  @Override
  public Integer call() throws IOException {
    Checked<Calibration> by = calibration();
    Checked<List<Run>> table = RecheckRuns.read(runs);
    if (!(by instanceof Checked.Ok<Calibration> known)
        || !(table instanceof Checked.Ok<List<Run>> turned)) {
      List<Problem> problems = new ArrayList<>(by.problems());
      problems.addAll(table.problems());
      return terminal.refuse(problems);
    }
    terminal.report(turned.notes());
    List<Recheck.AtRun> found = Recheck.of(known.value(), turned.value());
    if (found.isEmpty()) {
      return terminal.refuse(
          List.of(Problem.error("recheck.none", Where.file(runs.toString()), "")));
    }
    boolean agrees = true;
    for (Recheck.AtRun run : found) {
      agrees &= run.en().isSatisfactory();
      terminal.say(
          run.en().isSatisfactory() ? "recheck.agrees" : "recheck.differs",
          run.run(),
          Numerals.compact(run.speed_m_s(), 3),
          Numerals.compact(run.u95_m_s(), 2),
          Numerals.compact(run.read_m_s(), 3),
          Numerals.compact(run.u95_read_m_s(), 2),
          Numerals.signed(run.en().value(), 2));
    }
    terminal.say(agrees ? "recheck.stands" : "recheck.due");
    return (agrees ? ExitCode.DONE : ExitCode.LIMIT).number();
  }
}
