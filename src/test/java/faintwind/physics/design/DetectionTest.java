package faintwind.physics.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.files.asset.Library;
import faintwind.files.design.DesignFile;
import faintwind.message.Checked;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the half-inch copper pair can tell apart on a logger of 24 bits. */
class DetectionTest {
  private static final Path HALF_INCH = Path.of("src/test/resources/design/half-inch-copper.json");

  private final Design design;
  private final Detection detection;
  private final DesignAtCorner model;

  DetectionTest() throws IOException {
    Checked<Design> read = DesignFile.parse(Files.readString(HALF_INCH), Library.shipped());
    design = ((Checked.Ok<Design>) read).value();
    model = new DesignAtCorner(design, Corner.NOMINAL, DesignAtCorner.air(design));
    detection = new Detection(design.sense(), model);
  }

  /**
   * By hand: 0.4 µV of noise over 30 readings are 0.0730 µV, a step of 512 mV/2²² = 0.1221 µV adds
   * 0.0352 µV; together 0.0811 µV.
   */
  @Test
  void theReadingIsAsUncertainAsNoiseAndSteps() {
    assertThat(1e6 * detection.u_V()).isCloseTo(0.0811, within(1e-4));
    // twice that over 40.8 µV/K, type K near 33 °C
    assertThat(detection.resolution_K(12.9)).isCloseTo(2 * 0.0811 / 40.8, within(1e-5));
  }

  @ParameterizedTest(name = "at {0} m/s")
  @ValueSource(doubles = {0.1, 0.5, 1, 3})
  void aDifferenceOfTheAirReadsAsTheSpeedThatWouldMakeIt(double speed_m_s) {
    double slope = (model.delta_K(1.001 * speed_m_s) - model.delta_K(0.999 * speed_m_s));
    double byTenth_m_s = 0.1 * 0.002 * speed_m_s / Math.abs(slope);
    assertThat(detection.betweenBallsShare(speed_m_s) * speed_m_s / byTenth_m_s)
        .isCloseTo(1, within(1e-3));
    assertThat(detection.resolution_m_s(speed_m_s) / byTenth_m_s)
        .isCloseTo(detection.resolution_K(model.delta_K(speed_m_s)) / 0.1, within(1e-3));
  }

  /** Delta has to fall by what logger and room hide together, and there it has. */
  @Test
  void theSmallestSpeedIsWhereDeltaHasFallenEnough() {
    Detection.Smallest smallest = detection.smallest();
    DesignAtCorner bare = model.withoutLeads();
    assertThat(smallest.still_K()).isCloseTo(bare.delta_K(0), within(1e-9));
    assertThat(smallest.still_K() - bare.delta_K(smallest.speed_m_s()))
        .isCloseTo(Math.hypot(smallest.logger_K(), smallest.room_K()), within(1e-5));
    assertThat(detection.smallest_m_s()).isEqualTo(smallest.speed_m_s());
  }

  /** Two readings are compared: √2 of one, more by the square of what the leads leave. */
  @Test
  void theLoggersPartIsThatOfTwoReadings() {
    Detection.Smallest smallest = detection.smallest();
    double left = model.delta_K(0) / smallest.still_K();
    assertThat(smallest.logger_K())
        .isCloseTo(
            Math.sqrt(2) * detection.resolution_K(smallest.still_K()) / (left * left),
            within(1e-9));
    assertThat(left).isBetween(0.8, 0.95);
  }

  /**
   * The room: a draught of 15 mm/s, twice 0.2 % of supply, 0.1 K between the balls and 1 K an hour
   * followed unequally, as the root of the sum of squares.
   */
  @Test
  void theRoomsPartIsTheSumOfItsParts() {
    Detection.Smallest smallest = detection.smallest();
    DesignAtCorner bare = model.withoutLeads();
    double still = smallest.still_K();
    double left = model.delta_K(0) / still;
    double draught = still - bare.delta_K(0.015);
    double supply = 2 * 0.002 * still / left;
    double between = 0.1 / (left * left);
    double warming = DesignCourse.drift_K(bare) / (left * left);
    assertThat(smallest.room_K() * smallest.room_K())
        .isCloseTo(
            draught * draught + supply * supply + between * between + warming * warming,
            within(1e-9));
  }

  @Test
  void thinnerAirWarmsTheBall() {
    double here = Detection.still_K(design, design.air());
    assertThat(here).isCloseTo(model.delta_K(0), within(1e-9));
    assertThat(Detection.still_K(design, design.air().withPressure(70_000))).isGreaterThan(here);
  }
}
