package faintwind.command.air;

import faintwind.calibration.Calibration;
import faintwind.command.CommonOptions;
import faintwind.job.air.OpeningGuide;
import faintwind.job.air.ResultFile;
import faintwind.job.formula.OpenCalibration;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.terminal.ExitCode;
import faintwind.terminal.Terminal;
import faintwind.terminal.VersionText;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code faintwind opening --shape round --width-mm 315 --ball-mm 8 --out POINTS.csv}. */
@Command(
    name = "opening",
    mixinStandardHelpOptions = true,
    versionProvider = VersionText.class,
    resourceBundle = "faintwind.messages")
public final class OpeningCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Option(
      names = "--shape",
      required = true,
      paramLabel = "SHAPE",
      descriptionKey = "faintwind.opening.shape")
  private String shape = "";

  @Option(
      names = "--width-mm",
      required = true,
      paramLabel = "MM",
      descriptionKey = "faintwind.opening.width-mm")
  private String width_mm = "";

  @Option(names = "--height-mm", paramLabel = "MM", descriptionKey = "faintwind.opening.height-mm")
  private @Nullable String height_mm;

  @Option(names = "--u-size-mm", paramLabel = "MM", descriptionKey = "faintwind.opening.u-size-mm")
  private @Nullable String u_size_mm;

  @Option(names = "--rule", paramLabel = "RULE", descriptionKey = "faintwind.opening.rule")
  private @Nullable String rule;

  @Option(names = "--count", paramLabel = "N", descriptionKey = "faintwind.opening.count")
  private @Nullable String count;

  @Option(names = "--ball-mm", paramLabel = "MM", descriptionKey = "faintwind.opening.ball-mm")
  private @Nullable String ball_mm;

  @Option(names = "--front-cm2", paramLabel = "CM2", descriptionKey = "faintwind.opening.front-cm2")
  private @Nullable String front_cm2;

  @Option(
      names = "--u-position-mm",
      paramLabel = "MM",
      descriptionKey = "faintwind.opening.u-position-mm")
  private @Nullable String u_position_mm;

  @Option(
      names = "--calibration",
      paramLabel = "CAL.json",
      descriptionKey = "faintwind.opening.calibration")
  private @Nullable Path calibration;

  @Option(names = "--out", paramLabel = "POINTS.csv", descriptionKey = "faintwind.opening.out")
  private @Nullable Path out;

  @Mixin private CommonOptions common = new CommonOptions();

  public OpeningCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    Optional<Problem> trouble =
        out == null ? Optional.empty() : common.output(out).trouble(List.of());
    if (trouble.isPresent()) {
      return terminal.misuse(trouble.get());
    }
    Map<String, String> said = said();
    if (calibration != null) {
      Checked<Calibration> read = OpenCalibration.read(calibration);
      if (!(read instanceof Checked.Ok<Calibration> by)) {
        return terminal.refuse(read.problems());
      }
      double diameter_mm = 1000 * by.value().formula().diameter_m();
      said.putIfAbsent("ball_mm", String.valueOf(diameter_mm));
    }
    Checked<OpeningGuide> guide = OpeningGuide.of(said);
    if (!(guide instanceof Checked.Ok<OpeningGuide> ok)) {
      return refuse(guide.problems());
    }
    terminal.report(ok.notes());
    ok.value().lines(terminal.messages()).forEach(terminal.out()::println);
    if (out != null) {
      ResultFile.write(out, ok.value().table());
      terminal.tell("air.written", out.toString());
    }
    return ExitCode.DONE.number();
  }

  /** What no opening can be is a wrong command line; what does not suit the balls is refused. */
  private int refuse(List<Problem> problems) {
    List<Problem> named = problems.stream().map(OpeningCommand::named).toList();
    boolean misuse = named.stream().anyMatch(p -> p.where().column().isPresent());
    terminal.report(named);
    return (misuse ? ExitCode.USAGE : ExitCode.REFUSED).number();
  }

  /** A key of the table as the option that stands for it. */
  private static Problem named(Problem problem) {
    return problem
        .where()
        .column()
        .map(key -> problem.at(Where.NOWHERE.atColumn("--" + key.replace('_', '-'))))
        .orElse(problem);
  }

  private Map<String, String> said() {
    Map<String, String> said = new LinkedHashMap<>();
    put(said, "shape", shape);
    put(said, "width_mm", width_mm);
    put(said, "height_mm", height_mm);
    put(said, "u_size_mm", u_size_mm);
    put(said, "rule", rule);
    put(said, "count", count);
    put(said, "ball_mm", ball_mm);
    put(said, "front_cm2", front_cm2);
    put(said, "u_position_mm", u_position_mm);
    return said;
  }

  private static void put(Map<String, String> said, String key, @Nullable String text) {
    if (text != null) {
      said.put(key, text);
    }
  }
}
