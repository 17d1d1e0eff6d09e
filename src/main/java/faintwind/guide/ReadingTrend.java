package faintwind.guide;

import faintwind.calibration.bench.ControlChart;
import faintwind.guide.checklist.Reading;
import faintwind.message.NumberText;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.InstrumentState;
import faintwind.record.Standing;
import java.util.List;
import java.util.Optional;

/**
 * A reading that was taken again and again, as a control chart.
 *
 * @param lines each time it was taken, as far as it counts
 * @param chart their values in the unit that the reading is judged in
 */
public record ReadingTrend(List<Standing<ReadingEntered>> lines, ControlChart chart) {
  public ReadingTrend {
    lines = List.copyOf(lines);
  }

  /** The trend of a step's reading; empty where it was not taken often enough for limits. */
  public static Optional<ReadingTrend> of(String step, Reading reading, InstrumentState state) {
    List<Standing<ReadingEntered>> lines =
        state.history(step, reading.id()).stream()
            .filter(Standing::stands)
            .filter(line -> Double.isFinite(line.event().amount().value()))
            .toList();
    if (lines.size() < ControlChart.LEAST) {
      return Optional.empty();
    }
    List<Double> values =
        lines.stream()
            .map(line -> line.event().amount())
            .map(amount -> NumberText.convert(amount.value(), amount.unit(), reading.unit()))
            .toList();
    return Optional.of(new ReadingTrend(lines, ControlChart.of(values)));
  }
}
