package faintwind.command.air;

import faintwind.job.air.AirSource;
import faintwind.job.air.FlowText;
import faintwind.job.air.MeasureFlow;
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

/** {@code faintwind flow POINTS.csv [--speeds SPEEDS.csv --calibration CAL.json] [--out FILE]}. */
@Command(name = "flow")
public final class FlowCommand implements Callable<Integer> {
  private final Terminal terminal;

  @Parameters(paramLabel = "POINTS.csv", descriptionKey = "faintwind.flow.points")
  private Path points = Path.of("");

  @Mixin private FilledTable table = new FilledTable();

  public FlowCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() throws IOException {
    return table.run(points, new Kind(), terminal);
  }

  private static final class Kind implements FilledTable.Kind<MeasureFlow> {
    @Override
    public FileRole role() {
      return FileRole.FLOW;
    }

    @Override
    public Checked<MeasureFlow> work(Path table, AirSource from, Optional<Double> settle_s)
        throws IOException {
      return MeasureFlow.of(table, from, settle_s);
    }

    @Override
    public String json(MeasureFlow done, Map<String, String> inputs) {
      return FlowText.json(done, inputs);
    }

    @Override
    public List<String> lines(MeasureFlow done, Messages words) {
      return new FlowText(words).flow(done);
    }

    @Override
    public boolean isBeyondLimit(MeasureFlow done) {
      return done.flow().tooFaint();
    }
  }
}
