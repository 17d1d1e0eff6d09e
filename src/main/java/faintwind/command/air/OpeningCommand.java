package faintwind.command.air;

import faintwind.calibration.Calibration;
import faintwind.command.StandardOptions;
import faintwind.job.air.OpeningGuide;
import faintwind.job.air.ResultFile;
import faintwind.job.formula.OpenCalibration;
import faintwind.message.Checked;
import faintwind.message.Field;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.terminal.ExitCode;
import faintwind.terminal.Terminal;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code faintwind opening --shape round --width-mm 315 --ball-mm 8 --out POINTS.csv}. */
@Command(name = "opening")
public final class OpeningCommand implements Callable<Integer> {
  private static final String BALL = "ball_mm";

  private final Terminal terminal;

  /** Of each field what was said, under its key. */
  private final Map<String, OptionSpec> options = new LinkedHashMap<>();

  @Option(
      names = "--calibration",
      paramLabel = "CAL.json",
      descriptionKey = "faintwind.opening.calibration")
  private @Nullable Path calibration;

  @Option(names = "--out", paramLabel = "POINTS.csv", descriptionKey = "faintwind.opening.out")
  private @Nullable Path out;

  @Mixin private StandardOptions common = new StandardOptions();

  public OpeningCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  /** One option a field, before the others; the balls' diameter may come from a calibration. */
  @Spec
  void addOptions(CommandSpec command) {
    List<OptionSpec> others = List.copyOf(command.options());
    others.forEach(command::remove);
    for (Field each : OpeningGuide.FIELDS) {
      String name = each.key().replace('_', '-');
      OptionSpec option =
          OptionSpec.builder("--" + name)
              .required(each.required() && !each.key().equals(BALL))
              .paramLabel(label(each))
              .descriptionKey("faintwind.opening." + name)
              .type(String.class)
              .build();
      options.put(each.key(), option);
      command.addOption(option);
    }
    others.forEach(command::addOption);
  }

  private static String label(Field field) {
    String unit = field.key().substring(field.key().lastIndexOf('_') + 1);
    boolean counted = field.range().isPresent() && field.range().get().whole();
    return counted ? "N" : unit.toUpperCase(Locale.ROOT);
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
      said.putIfAbsent(BALL, String.valueOf(diameter_mm));
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
    options.forEach(
        (key, option) -> {
          @Nullable String text = option.getValue();
          if (text != null) {
            said.put(key, text);
          }
        });
    return said;
  }
}
