package faintwind.command.air;

import faintwind.job.air.ResultFile;
import faintwind.job.air.SurveyPlaces;
import faintwind.job.air.SurveyText;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.record.Event.FileRole;
import faintwind.terminal.ExitCode;
import faintwind.terminal.Terminal;
import faintwind.terminal.VersionText;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/**
 * {@code faintwind survey PLACES.csv [--speeds SPEEDS.csv --calibration CAL.json] [--out FILE]}.
 */
@Command(
    name = "survey",
    mixinStandardHelpOptions = true,
    versionProvider = VersionText.class,
    resourceBundle = "faintwind.messages")
public final class SurveyCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "PLACES.csv", descriptionKey = "faintwind.survey.places")
  private Path places = Path.of("");

  @Mixin private SourceOptions source = new SourceOptions();

  @Mixin private SourceOptions.Stays stays = new SourceOptions.Stays();

  @Mixin private ResultOptions result = new ResultOptions();

  public SurveyCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    List<Path> inputs = new ArrayList<>(List.of(places));
    stays.speeds().ifPresent(inputs::add);
    source.calibration().ifPresent(inputs::add);
    List<Problem> misuse = new ArrayList<>(source.misuse(Optional.of(stays)));
    misuse.addAll(result.misuse(inputs));
    if (!misuse.isEmpty()) {
      terminal.report(misuse);
      return ExitCode.USAGE.number();
    }
    Checked<SurveyPlaces> done =
        AirWork.with(source, stays, from -> SurveyPlaces.of(places, from, stays.settle_s()));
    List<Problem> shut = result.shut();
    if (!(done instanceof Checked.Ok<SurveyPlaces> ok) || !shut.isEmpty()) {
      List<Problem> all = new ArrayList<>(done.problems());
      all.addAll(shut);
      return terminal.refuse(all);
    }
    terminal.report(ok.notes());
    if (!result.json()) {
      ok.value().settling().ifPresent(s -> terminal.out().println(words().settle(s)));
    }
    String text = SurveyText.json(ok.value(), ResultFile.hashes(inputs));
    if (result.json()) {
      terminal.out().print(text);
    } else {
      words().lines(ok.value()).forEach(terminal.out()::println);
    }
    terminal.out().flush();
    List<Problem> notEntered = result.keep(text, FileRole.SURVEY, places, terminal);
    if (!notEntered.isEmpty()) {
      return terminal.refuse(notEntered);
    }
    return (ok.value().drifted() ? ExitCode.LIMIT : ExitCode.DONE).number();
  }

  private SurveyText words() {
    return new SurveyText(terminal.messages());
  }
}
