package faintwind.physics.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.files.asset.Library;
import faintwind.files.design.DesignFile;
import faintwind.message.Checked;
import faintwind.physics.Interval;
import faintwind.physics.design.Design;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;

/**
 * The half-inch copper pair in gold: what follows from sizes and tolerances alone, worked by hand
 * from the data of its parts. A builder compares readings with these.
 */
class WorkedSheetTest {
  private final DesignSheet sheet;

  WorkedSheetTest() throws IOException {
    String text = Files.readString(Path.of("src/test/resources/design/half-inch-copper.json"));
    Checked<Design> read =
        DesignFile.parse(text.replace("bare-polished-copper", "gold"), Library.shipped());
    sheet = DesignSheet.of(((Checked.Ok<Design>) read).value());
  }

  /** Outcome, low, nominal, high, and how; all in one test, since the sheet takes its time. */
  private static final String ROWS =
      """
      # 12.7 ± 0.05 mm, 8930 to 8940 kg/m³
      BALL_DIAMETER, 12.65, 12.7, 12.75, design
      BALL_AREA, 502.726, 506.707, 510.705, π·d²
      BALL_MASS, 9.46502, 9.58306, 9.70212, ρ·π/6·d³
      BLANK_MASS_AGREEMENT, 0.0479153, 0.0479153, 0.0479153, 0.5 % of 9.58306
      BORE, 3.3, 3.3, 3.3, design
      HEATED_BORE_DEPTH, 12.7, 12.7, 12.7, right through
      REFERENCE_BORE_DEPTH, 9.5, 9.5, 9.5, design
      BORE_MASS_PER_MM, 0.0764209, 0.0764209, 0.0764209, 8935·π/4·(3.3 mm)²
      # dome 6.35 − √(6.35² − 1.65²), point 1.65·cot 59°
      FLAT_DEPTH, 0.218116, 0.218116, 0.218116, dome
      HEATED_FROM_FLAT, 12.4819, 12.4819, 12.4819, 12.7 − dome
      REFERENCE_FROM_FLAT, 9.28188, 9.28188, 9.28188, 9.5 − dome
      HEATED_TRAVEL, 13.4733, 13.4733, 13.4733, with the point
      REFERENCE_TRAVEL, 10.2733, 10.2733, 10.2733, with the point
      HEATED_PECKS, 5, 5, 5, 13.47/3.3 rounded up
      REFERENCE_PECKS, 4, 4, 4, 10.27/3.3 rounded up
      PECK_DEPTH, 3.3, 3.3, 3.3, one diameter
      DRILL_SPEED, 2025.61, 3183.10, 4340.59, 21 to 45 m/min over π·3.3 mm
      BORE_NEEDED, 2.9, 3.05, 3.2, 2.2 to 2.5 + 0.6 + 2·0.05 mm
      BORE_CLEARANCE, 0.1, 0.25, 0.4, 3.3 mm less that
      # 100 Ω ± 1 %, 5 V ± 2 %, cable 2·0.5 m of 0.20228 to 0.22357 Ω/m
      HEATER_RESISTANCE, 99, 100, 101, design
      LEAD_LENGTH, 60, 60, 60, design
      LEAD_TO_LEAD_LOW, 99.155156, 99.155156, 99.155156, 99 Ω + 0.12 m·1.29297 Ω/m
      LEAD_TO_LEAD_HIGH, 101.171488, 101.171488, 101.171488, 101 Ω + 0.12 m·1.42907 Ω/m
      SUPPLY_LOW, 4.9, 4.9, 4.9, 5 V − 2 %
      SUPPLY_HIGH, 5.1, 5.1, 5.1, 5 V + 2 %
      CABLE_RESISTANCE, 0.20228, 0.212925, 0.22357, 1 m
      CABLE_END_TO_END, 0.611785, 0.611785, 0.611785, 0.22357/2 + 0.5 Ω
      HEATER_RATING, 0.5, 0.5, 0.5, its style
      # the next of the R10 series above one and a half times the largest current
      FUSE, 80, 80, 80, 1.5·51.6 = 77.4 mA
      BATTERY_FRESH, 9.4, 9.4, 9.4, its data
      TOUCH_LIMIT, 58, 58, 58, 4 s
      # absorptance 0.19 to 0.31 of 1000 W/m² on π/4·(12.7 mm)²
      SUN_ABSORBED, 24.0686, 31.6692, 39.2698, mW
      LOOP_LENGTH, 600, 600, 600, design
      BETWEEN_LENGTH, 150, 150, 150, the usual
      INSULATION_GOOD, 20, 20, 20, as the class says
      INSULATION_STOP, 1, 1, 1, as the class says
      # 5.06707 cm²: 1 and 0.3 A/dm²; Faraday with 8900 and 19 300 kg/m³
      PLATING_NICKEL_CURRENT, 50.6707, 50.6707, 50.6707, mA
      PLATING_GOLD_CURRENT, 15.2012, 15.2012, 15.2012, mA
      PLATING_NICKEL_TIME, 24.3843, 24.3843, 24.3843, 74.134 C/50.67 mA in minutes
      PLATING_GOLD_TIME, 157.570, 157.570, 157.570, 2.3953 C/15.2 mA in s
      PLATING_CHARGE, 76.5296, 76.5296, 76.5296, 74.134 + 2.3953 C
      PLATING_HYDROGEN, 19.080, 19.080, 19.080, 2·76.53 C/(2·F) at 20 °C
      PLATING_HYDROGEN_ROOM, 0.00159, 0.00159, 0.00159, of 4 % of 30 m³
      JAR_AIR, 20, 20, 20, design
      JAR_PRESSURE, 1013.25, 1013.25, 1013.25, design
      """;

  @Test
  void everyRowIsAsWorkedByHand() {
    SoftAssertions softly = new SoftAssertions();
    ROWS.lines()
        .filter(line -> !line.startsWith("#"))
        .map(line -> line.split(", ", 5))
        .forEach(row -> compare(softly, row));
    softly.assertAll();
  }

  private void compare(SoftAssertions softly, String[] row) {
    Interval value = band(OutcomeId.valueOf(row[0]));
    double[] found = {value.low(), value.nominal(), value.high()};
    for (int i = 0; i < 3; i++) {
      double worked = Double.parseDouble(row[i + 1]);
      softly
          .assertThat(found[i])
          .as("%s by %s", row[0], row[4])
          .isCloseTo(worked, within(5e-5 * Math.max(1e-3, Math.abs(worked))));
    }
  }

  private double nominal(OutcomeId id) {
    return sheet.quantity(id).orElseThrow().value().nominal();
  }

  private Interval band(OutcomeId id) {
    return sheet.quantity(id).orElseThrow().value();
  }

  /** What hangs together, whatever the heat balance gives. */
  @Test
  void outcomesOfOneLawAgree() {
    // π/6·(12.7² − 3.3²)^1.5 mm³, and the blank less dome, cylinder and cone, of 8935 kg/m³
    assertThat(nominal(OutcomeId.HEATED_BALL_MASS)).isCloseTo(8.62909, within(1e-5));
    assertThat(nominal(OutcomeId.REFERENCE_BALL_MASS)).isCloseTo(8.84009, within(1e-5));
    double power_W = nominal(OutcomeId.HEATER_POWER);
    double current_A = 1e-3 * nominal(OutcomeId.HEATER_CURRENT);
    // Joule, within what the resistance changes between its nominal and its hottest
    assertThat(current_A * nominal(OutcomeId.HEATER_VOLTAGE) / power_W).isCloseTo(1, within(1e-3));
    assertThat(nominal(OutcomeId.HEATER_VOLTAGE) + nominal(OutcomeId.CABLE_DROP))
        .isCloseTo(5, within(1e-3));
    // a body of 2.35 mm by 6.5 mm has a side of 0.47988 cm²
    assertThat(nominal(OutcomeId.HEATER_FLUX)).isCloseTo(power_W / 0.47988, within(1e-4));
    assertThat(nominal(OutcomeId.BALL_FLUX)).isCloseTo(power_W / 506.707e-6, within(0.01));
    // the regulator's own 6 mA, and the capacity between 15 and 100 mA on a straight line
    assertThat(nominal(OutcomeId.BATTERY_CURRENT)).isCloseTo(1e3 * current_A + 6, within(1e-6));
    assertThat(nominal(OutcomeId.BATTERY_TIME)).isCloseTo(451.89 / 55.894, within(1e-3));
    assertThat(band(OutcomeId.BATTERY_TIME).low()).isCloseTo(356.70 / 57.611, within(1e-3));
    assertThat(band(OutcomeId.BATTERY_TIME).high()).isCloseTo(547.08 / 54.220, within(1e-3));
    assertThat(band(OutcomeId.CURRENT_LOW))
        .isEqualTo(Interval.exact(band(OutcomeId.HEATER_CURRENT).low()));
    // the heat on top of 20 °C; five time constants in minutes
    assertThat(nominal(OutcomeId.HEATED_BALL_TEMPERATURE))
        .isCloseTo(20 + nominal(OutcomeId.STILL_DELTA), within(1e-9));
    assertThat(nominal(OutcomeId.WARM_UP_TIME))
        .isCloseTo(nominal(OutcomeId.TIME_CONSTANT_STILL) / 12, within(1e-9));
    assertThat(nominal(OutcomeId.JAR_TIME))
        .isCloseTo(band(OutcomeId.TIME_CONSTANT_STILL).high() / 12, within(1e-9));
    assertThat(nominal(OutcomeId.LEAD_LOSS_SHARE))
        .isCloseTo(
            0.1 * nominal(OutcomeId.LEAD_LOSS) * nominal(OutcomeId.STILL_DELTA) / power_W,
            within(1e-6));
    assertThat(nominal(OutcomeId.TIME_CONSTANT_AT_3))
        .isCloseTo(
            nominal(OutcomeId.BALL_HEAT_CAPACITY) * nominal(OutcomeId.DELTA_AT_3) / power_W,
            within(0.05));
    // ±256 mV
    assertThat(nominal(OutcomeId.RANGE_SHARE))
        .isCloseTo(nominal(OutcomeId.SIGNAL_STILL) / 2.56, within(1e-9));
    assertThat(nominal(OutcomeId.SUN_SHARE)).isCloseTo(0.1 * 31.6692 / power_W, within(1e-3));
    // 5 µV, twice √(0.4² + 0.122²/12) µV, and 0.1 K at 40.3 µV/K (type K near 20 °C)
    assertThat(band(OutcomeId.ZERO_BAND).high()).isCloseTo(5e-3 + 0.803e-3 + 4.03e-3, within(1e-5));
    assertThat(band(OutcomeId.ZERO_BAND).low()).isEqualTo(-band(OutcomeId.ZERO_BAND).high());
  }
}
