package faintwind.command.air;

import faintwind.job.air.AirSource;
import faintwind.job.air.SurveyPlaces;
import faintwind.job.air.SurveyText;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.record.Event.FileRole;
import faintwind.terminal.Terminal;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/**
 * {@code faintwind survey PLACES.csv [--speeds SPEEDS.csv --calibration CAL.json] [--out FILE]}.
 */
@Command(name = "survey")
public final class SurveyCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "PLACES.csv", descriptionKey = "faintwind.survey.places")
  private Path places = Path.of("");

  @Mixin private FilledTable table = new FilledTable();

  public SurveyCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    return table.run(places, new Kind(), terminal);
  }

  private static final class Kind implements FilledTable.Kind<SurveyPlaces> {
    @Override
    public FileRole role() {
      return FileRole.SURVEY;
    }

    @Override
    public Checked<SurveyPlaces> work(Path table, AirSource from, Optional<Double> settle_s)
        throws IOException {
      return SurveyPlaces.of(table, from, settle_s);
    }

    @Override
    public String json(SurveyPlaces done, Map<String, String> inputs) {
      return SurveyText.json(done, inputs);
    }

    @Override
    public List<String> lines(SurveyPlaces done, Messages words) {
      return new SurveyText(words).lines(done);
    }

    @Override
    public boolean isBeyondLimit(SurveyPlaces done) {
      return done.drifted();
    }
  }
}
