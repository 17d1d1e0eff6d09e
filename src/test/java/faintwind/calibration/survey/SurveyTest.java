package faintwind.calibration.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.field.SharedPart;
import faintwind.calibration.field.SpeedSeries;
import faintwind.calibration.field.StretchMean;
import faintwind.calibration.speed.SpeedRow;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class SurveyTest {
  private static final StretchMean.How HOW =
      new StretchMean.How(20, SharedPart.unknown(), StretchMean.Of.THE_PLACE);

  private static Visit visit(String place, double speed, double shared, double own) {
    StretchMean mean = new StretchMean(speed, shared, own, 100, 0, true);
    return new Visit(place, Optional.of(mean), OptionalDouble.of(60), true);
  }

  @Test
  void placesThatCannotBeToldApartShareARank() {
    Survey survey =
        Survey.of(
            List.of(
                Visit.typed("sill", 0.10, 0.02),
                Visit.typed("door", 0.31, 0.02),
                Visit.typed("socket", 0.30, 0.02),
                Visit.typed("hatch", 0.20, 0.02)));
    assertThat(survey.ranked())
        .extracting(r -> r.visit().place() + " " + r.rank())
        .containsExactly("door 1", "socket 1", "hatch 3", "sill 4");
    assertThat(survey.drift()).isEmpty();
  }

  /** Middle of three: not to be told from either, while those two differ. */
  @Test
  void rankCountsOnlyThoseThatAreSurelyFaster() {
    Survey survey =
        Survey.of(
            List.of(
                Visit.typed("a", 0.30, 0.02),
                Visit.typed("b", 0.28, 0.02),
                Visit.typed("c", 0.26, 0.02)));
    assertThat(survey.ranked()).extracting(Survey.Ranked::rank).containsExactly(1, 1, 2);
  }

  /** An error of the calibration moves both places: it does not keep them from being told apart. */
  @Test
  void sharedPartDropsOutOfADifference() {
    Visit one = visit("one", 0.30, 0.03, 0.005);
    Visit other = visit("other", 0.32, 0.03, 0.005);
    Survey parted = Survey.of(List.of(one, other));
    assertThat(parted.ranked()).extracting(Survey.Ranked::rank).containsExactly(1, 2);
    Survey whole =
        Survey.of(List.of(Visit.typed("one", 0.30, 0.0304), Visit.typed("other", 0.32, 0.0304)));
    assertThat(whole.ranked()).extracting(Survey.Ranked::rank).containsExactly(1, 1);
  }

  @Test
  void firstPlaceAgainShowsADrift() {
    Survey steady =
        Survey.of(
            List.of(
                visit("a", 0.2, 0.01, 0.005),
                visit("b", 0.3, 0.01, 0.005),
                visit("a", 0.203, 0.01, 0.005)));
    assertThat(steady.drift().orElseThrow().isTooLarge()).isFalse();
    assertThat(steady.ranked()).hasSize(2);
    Survey drifted =
        Survey.of(
            List.of(
                visit("a", 0.2, 0.01, 0.005),
                visit("b", 0.3, 0.01, 0.005),
                visit("a", 0.215, 0.01, 0.005)));
    Survey.Drift drift = drifted.drift().orElseThrow();
    assertThat(drift.isTooLarge()).isTrue();
    assertThat(drift.change_m_s()).isCloseTo(0.015, within(1e-12));
    assertThat(drift.allowed_m_s()).isCloseTo(0.005 * Math.sqrt(2), within(1e-12));
  }

  private static SpeedSeries series(DoubleUnaryOperator speed) {
    SpeedSeries.Builder rows = new SpeedSeries.Builder();
    for (int t = 0; t < 600; t++) {
      double v = speed.applyAsDouble(t);
      rows.add(t, new SpeedRow(OptionalDouble.of(v), OptionalDouble.of(0.01), Set.of()));
    }
    return rows.build();
  }

  @Test
  void stayCountsOnceSettled() {
    Stay stay = new Stay(series(t -> t < 100 ? 0.5 : 0.2), Settling.typed(120), HOW);
    Visit visit = stay.at("a", 0, 600);
    assertThat(visit.settled_s()).hasValue(120);
    assertThat(visit.steady()).isTrue();
    assertThat(visit.speed().orElseThrow().speed_m_s()).isCloseTo(0.2, within(1e-9));
  }

  @Test
  void stayWaitsLongerWhereTheSpeedStillChanges() {
    Stay stay = new Stay(series(t -> t < 200 ? 0.5 : 0.2), Settling.typed(60), HOW);
    Visit visit = stay.at("a", 0, 600);
    assertThat(visit.settled_s().orElseThrow()).isBetween(179.0, 241.0);
    assertThat(visit.speed().orElseThrow().speed_m_s()).isCloseTo(0.2, within(0.02));
  }

  @Test
  void windThatNeverSettlesIsTold() {
    Stay stay = new Stay(series(t -> 0.1 + t / 1000), Settling.typed(60), HOW);
    Visit visit = stay.at("a", 0, 600);
    assertThat(visit.steady()).isFalse();
    assertThat(visit.speed()).isPresent();
  }

  @Test
  void shortStaySaysHowLongToWait() {
    Stay stay = new Stay(series(t -> 0.2), Settling.typed(120), HOW);
    Visit visit = stay.at("a", 0, 100);
    assertThat(visit.speed()).isEmpty();
    assertThat(visit.settled_s()).hasValue(120);
    assertThat(Survey.of(List.of(visit)).unsettled()).containsExactly(visit);
  }

  @Test
  void typedWaitIsKept() {
    assertThat(Settling.typed(90).atMost_s()).isCloseTo(90, within(1e-9));
    assertThat(Settling.typed(90).moving_s()).isCloseTo(90, within(1e-9));
  }
}
