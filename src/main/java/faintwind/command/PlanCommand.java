package faintwind.command;

import faintwind.calibration.plan.Plan;
import faintwind.calibration.plan.PlanRequest;
import faintwind.calibration.plan.PlannedSession;
import faintwind.calibration.plan.Response;
import faintwind.job.turntable.PlanText;
import faintwind.job.turntable.PlanTurntable;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.terminal.ExitCode;
import faintwind.terminal.ProgressLine;
import faintwind.terminal.Terminal;
import faintwind.terminal.VersionText;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/**
 * {@code faintwind plan SOURCE --radius-mm MM [--json] [--out PLAN.json] [--sheet SHEET.pdf]}:
 * plans a session at the turntable for the instrument of a design, a calibration or a folder.
 */
@Command(
    name = "plan",
    mixinStandardHelpOptions = true,
    versionProvider = VersionText.class,
    resourceBundle = "faintwind.messages")
public final class PlanCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "SOURCE", descriptionKey = "faintwind.plan.source")
  private Path source = Path.of("");

  @Mixin private PlanArmOptions arm = new PlanArmOptions();
  @Mixin private PlanWishOptions wish = new PlanWishOptions();

  @Option(names = "--u-swirl-pct", paramLabel = "PCT", descriptionKey = "faintwind.plan.u-swirl")
  private @Nullable Double uSwirl_pct;

  @Option(
      names = "--asymmetry-pct",
      paramLabel = "PCT",
      descriptionKey = "faintwind.plan.asymmetry")
  private double asymmetry_pct = 100 * PlanRequest.USUAL_ASYMMETRY;

  @Option(names = "--separate", descriptionKey = "faintwind.plan.separate")
  private boolean separate;

  @Option(names = "--json", descriptionKey = "faintwind.plan.json")
  private boolean json;

  @Option(names = "--out", paramLabel = "PLAN.json", descriptionKey = "faintwind.plan.out")
  private @Nullable Path out;

  @Option(names = "--sheet", paramLabel = "SHEET.pdf", descriptionKey = "faintwind.plan.sheet")
  private @Nullable Path sheet;

  @Mixin private CommonOptions common = new CommonOptions();

  public PlanCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    List<Problem> misuse = misuse();
    if (!misuse.isEmpty()) {
      terminal.report(misuse);
      return ExitCode.USAGE.number();
    }
    OffsetDateTime now = OffsetDateTime.now(Clock.system(ZoneId.systemDefault()));
    Checked<PlannedSession> planned =
        PlanTurntable.response(source, now)
            .then(response -> PlanTurntable.plan(request(response), ProgressLine.on(terminal)));
    if (!(planned instanceof Checked.Ok<PlannedSession> ok)) {
      return terminal.refuse(planned.problems());
    }
    say(ok.value());
    terminal.report(ok.notes());
    return ExitCode.DONE.number();
  }

  private PlanRequest request(Response response) {
    return new PlanRequest(
        arm.arm(),
        wish.wish(),
        response,
        uSwirl_pct == null ? OptionalDouble.empty() : OptionalDouble.of(uSwirl_pct / 100),
        asymmetry_pct / 100);
  }

  private void say(PlannedSession planned) throws IOException {
    Plan.Form form = separate ? Plan.Form.SEPARATE : Plan.Form.STAIRCASE;
    if (json) {
      terminal.out().print(PlanTurntable.text(planned));
    } else {
      new PlanText(terminal.messages())
          .lines(planned.choice(), form)
          .forEach(terminal.out()::println);
    }
    terminal.out().flush();
    if (out != null) {
      PlanTurntable.write(planned, out);
    }
    if (sheet != null) {
      Path name = source.toAbsolutePath().normalize().getFileName();
      PlanTurntable.writeSheet(planned, form, sheet, String.valueOf(name), terminal.messages());
    }
  }

  private List<Problem> misuse() throws IOException {
    List<Problem> problems = new ArrayList<>(arm.problems());
    problems.addAll(wish.problems());
    PlanArmOptions.require("--asymmetry-pct", asymmetry_pct, 0.01, 20, problems);
    if (uSwirl_pct != null) {
      PlanArmOptions.require("--u-swirl-pct", uSwirl_pct, 0.01, 20, problems);
    }
    if (out != null) {
      common.output(out).trouble(List.of(source)).ifPresent(problems::add);
    }
    if (sheet != null) {
      common.output(sheet).trouble(List.of(source)).ifPresent(problems::add);
    }
    if (out != null && sheet != null && same(out, sheet)) {
      problems.add(Problem.error("usage.same-output", Where.NOWHERE, sheet.toString()));
    }
    return problems;
  }

  private static boolean same(Path one, Path other) {
    return one.toAbsolutePath().normalize().equals(other.toAbsolutePath().normalize());
  }
}
