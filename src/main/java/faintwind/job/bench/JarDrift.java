package faintwind.job.bench;

import faintwind.guide.Due;
import faintwind.guide.Situation;
import faintwind.message.Amount;
import faintwind.message.NumberText;
import faintwind.physics.sheet.OutcomeId;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.InstrumentState;
import faintwind.record.Standing;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * By how much one jar check differs from another, both brought to the air of the calibration: 10 K
 * or a mountain between them change the difference by several per cent, and the instrument not at
 * all.
 */
final class JarDrift {
  private static final String AIR = "jar-air";
  private static final String PRESSURE = "jar-pressure";

  private final InstrumentState state;
  private final Map<String, Double> sheet;

  JarDrift(Situation situation) {
    state = situation.state();
    sheet = situation.sheetValues();
  }

  /** Change relative to the first; empty where the air of one of them is not known. */
  Optional<Double> between(Standing<ReadingEntered> first, Standing<ReadingEntered> last) {
    Optional<Double> before = level_K(first);
    return level_K(last).flatMap(now -> before.map(then -> now / then - 1));
  }

  private Optional<Double> level_K(Standing<ReadingEntered> check) {
    Amount delta = check.event().amount();
    double raw_K = NumberText.convert(delta.value(), delta.unit(), "K");
    Optional<Double> air =
        correction(
            of(check, AIR, "°C"),
            sheet.get(OutcomeId.JAR_SLOPE.id()),
            sheet.get(OutcomeId.JAR_AIR.id()));
    Optional<Double> pressure =
        correction(
            of(check, PRESSURE, "hPa"),
            sheet.get(OutcomeId.JAR_PRESSURE_SLOPE.id()),
            sheet.get(OutcomeId.JAR_PRESSURE.id()));
    return air.flatMap(a -> pressure.map(p -> raw_K - a - p));
  }

  private static Optional<Double> correction(
      Optional<Double> found, @Nullable Double slope, @Nullable Double reference) {
    return slope == null || reference == null
        ? Optional.empty()
        : found.map(value -> slope * (value - reference));
  }

  /** What stood with a check: the last such reading before it, in the unit of the sheet. */
  private Optional<Double> of(Standing<ReadingEntered> check, String reading, String unit) {
    int place = state.place(check.entry()).orElse(0);
    return state.history(Due.JAR_STEP, reading).stream()
        .filter(Standing::stands)
        .filter(line -> state.place(line.entry()).orElse(0) < place)
        .reduce((earlier, later) -> later)
        .map(line -> line.event().amount())
        .map(amount -> NumberText.convert(amount.value(), amount.unit(), unit));
  }
}
