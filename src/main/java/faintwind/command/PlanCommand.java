package faintwind.command;

import faintwind.calibration.plan.Plan;
import faintwind.calibration.plan.PlanField;
import faintwind.calibration.plan.PlanTerms;
import faintwind.calibration.plan.PlannedSession;
import faintwind.job.turntable.PlanText;
import faintwind.job.turntable.PlanTurntable;
import faintwind.message.Checked;
import faintwind.message.Field;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.record.Event.FileRole;
import faintwind.terminal.ExitCode;
import faintwind.terminal.ProgressLine;
import faintwind.terminal.Terminal;
import faintwind.terminal.VersionText;
import faintwind.terminal.WhoOption;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

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

  private final Map<PlanField, OptionSpec> options = new EnumMap<>(PlanField.class);

  @Option(names = "--separate", descriptionKey = "faintwind.plan.separate")
  private boolean separate;

  @Option(names = "--json", descriptionKey = "faintwind.plan.json")
  private boolean json;

  @Option(names = "--out", paramLabel = "PLAN.json", descriptionKey = "faintwind.plan.out")
  private @Nullable Path out;

  @Option(names = "--sheet", paramLabel = "SHEET.pdf", descriptionKey = "faintwind.plan.sheet")
  private @Nullable Path sheet;

  @Mixin private WhoOption who = new WhoOption();

  @Mixin private CommonOptions common = new CommonOptions();

  public PlanCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  /** One option a field; the directions are a flag. */
  @Spec
  void addOptions(CommandSpec command) {
    for (PlanField each : PlanField.values()) {
      Field field = each.field();
      OptionSpec.Builder option =
          option(each).required(field.required()).paramLabel(label(field)).type(type(field));
      if (each == PlanField.DIRECTIONS) {
        option.arity("0").type(boolean.class);
      } else if (each.isList()) {
        option.type(List.class).auxiliaryTypes(type(field)).splitRegex(",");
      }
      options.put(each, option.build());
    }
    options.values().forEach(command::addOption);
  }

  /** What was said, with what is usual where nothing was. */
  private Map<String, String> said() {
    Map<String, String> said = PlanField.usual();
    options.forEach(
        (field, option) -> {
          @Nullable Object value = option.getValue();
          if (value instanceof List<?> items) {
            said.put(
                field.field().id(),
                items.stream().map(PlanCommand::plain).collect(Collectors.joining(",")));
          } else if (Boolean.TRUE.equals(value)) {
            said.put(field.field().id(), "one-way");
          } else if (value != null && !Boolean.FALSE.equals(value)) {
            said.put(field.field().id(), plain(value));
          }
        });
    return said;
  }

  private static OptionSpec.Builder option(PlanField field) {
    String name = field == PlanField.DIRECTIONS ? "--one-way" : field.option();
    return OptionSpec.builder(name).descriptionKey("faintwind.plan." + name.substring(2));
  }

  private static Class<?> type(Field field) {
    return field.range().isEmpty()
        ? String.class
        : field.range().get().whole() ? Integer.class : Double.class;
  }

  private static String label(Field field) {
    return switch (field.unit()) {
      case "mm" -> "MM";
      case "h" -> "HOURS";
      case "m/s" -> "SPEED";
      case "min" -> "MINUTES";
      case "%" -> "PCT";
      default -> field.words().isEmpty() ? "N" : "WAY";
    };
  }

  private static String plain(@Nullable Object value) {
    return value instanceof Number number
        ? Field.plain(number.doubleValue())
        : String.valueOf(value);
  }

  @Override
  public Integer call() throws IOException {
    Checked<PlanTerms> terms =
        PlanTerms.of(said(), field -> Where.NOWHERE.atColumn(field.option()));
    List<Problem> misuse = new ArrayList<>(terms.problems());
    misuse.addAll(outputMisuse());
    if (!(terms instanceof Checked.Ok<PlanTerms> said) || !misuse.isEmpty()) {
      terminal.report(misuse);
      return ExitCode.USAGE.number();
    }
    IntoInstruments instruments = new IntoInstruments(who.name());
    List<Problem> shut = instruments.trouble(written().keySet());
    if (!shut.isEmpty()) {
      return terminal.refuse(shut);
    }
    OffsetDateTime now = OffsetDateTime.now(Clock.system(ZoneId.systemDefault()));
    Checked<PlannedSession> planned =
        PlanTurntable.response(source, now)
            .then(r -> PlanTurntable.plan(said.value().with(r), ProgressLine.on(terminal)));
    if (!(planned instanceof Checked.Ok<PlannedSession> ok)) {
      return terminal.refuse(planned.problems());
    }
    say(ok.value());
    terminal.report(ok.notes());
    List<Problem> notEntered = instruments.enter(written());
    return notEntered.isEmpty() ? ExitCode.DONE.number() : terminal.refuse(notEntered);
  }

  private Map<Path, FileRole> written() {
    Map<Path, FileRole> written = new LinkedHashMap<>();
    if (out != null) {
      written.put(out, FileRole.PLAN);
    }
    if (sheet != null) {
      written.put(sheet, FileRole.REPORT);
    }
    return written;
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

  private List<Problem> outputMisuse() throws IOException {
    List<Problem> problems = new ArrayList<>();
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
