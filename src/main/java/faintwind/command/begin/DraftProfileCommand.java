package faintwind.command.begin;

import faintwind.calibration.profile.Understood;
import faintwind.command.StandardOptions;
import faintwind.job.formula.DraftProfile;
import faintwind.message.Checked;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.terminal.ExitCode;
import faintwind.terminal.Terminal;
import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code faintwind draft-profile SAMPLE [--zone ZONE] [--out PROFILE.json]}. */
@Command(name = "draft-profile")
public final class DraftProfileCommand implements Callable<Integer> {
  private static final int SHOWN_ROWS = 5;

  /** Enough for milliseconds since 1970. */
  private static final int SHOWN_DIGITS = 13;

  private final Terminal terminal;

  @Parameters(paramLabel = "SAMPLE", descriptionKey = "faintwind.draft-profile.sample")
  private Path sample = Path.of("");

  @Option(names = "--zone", paramLabel = "ZONE", descriptionKey = "faintwind.draft-profile.zone")
  private @Nullable ZoneId zone;

  @Option(
      names = "--out",
      paramLabel = "PROFILE.json",
      descriptionKey = "faintwind.draft-profile.out")
  private @Nullable Path out;

  @Mixin private StandardOptions common = new StandardOptions();

  public DraftProfileCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    if (out != null) {
      Optional<Problem> trouble = common.output(out).trouble(List.of(sample));
      if (trouble.isPresent()) {
        return terminal.misuse(trouble.get());
      }
    }
    ZoneId clocks = zone == null ? ZoneId.systemDefault() : zone;
    Checked<DraftProfile> drafted = DraftProfile.of(sample, clocks);
    if (!(drafted instanceof Checked.Ok<DraftProfile> ok)) {
      return terminal.refuse(drafted.problems());
    }
    DraftProfile draft = ok.value();
    terminal.report(draft.notes());
    if (out == null) {
      terminal.out().print(draft.text());
    }
    show(draft);
    if (out == null) {
      terminal.say("draft.not-written");
    } else {
      draft.write(out);
      terminal.say("draft.written", out.toString());
    }
    return ExitCode.DONE.number();
  }

  /** What the draft makes of the first rows. */
  private void show(DraftProfile draft) {
    Understood understood = draft.understood();
    terminal.say("draft.reading", draft.readAs());
    terminal.out().println(String.join("  ", understood.columns()));
    understood.rows().stream()
        .limit(SHOWN_ROWS)
        .map(row -> String.join("  ", row.cells().stream().map(this::cell).toList()))
        .forEach(terminal.out()::println);
    understood.start().ifPresent(start -> terminal.say("draft.start", start));
    terminal.report(understood.problems().stream().limit(SHOWN_ROWS).toList());
  }

  private String cell(OptionalDouble value) {
    return value.isPresent() ? Numerals.digits(value.getAsDouble(), SHOWN_DIGITS) : "-";
  }
}
