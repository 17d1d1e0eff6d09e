package faintwind.physics.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.files.asset.Library;
import faintwind.files.design.DesignFile;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.physics.Interval;
import faintwind.physics.design.Corner;
import faintwind.physics.design.CoursePoint;
import faintwind.physics.design.CurvePoint;
import faintwind.physics.design.Design;
import faintwind.physics.design.DesignAtCorner;
import faintwind.physics.design.Spread;
import faintwind.physics.part.Catalogue;
import faintwind.physics.part.ESeries;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class DesignSheetTest {
  private static final Path HALF_INCH = Path.of("src/test/resources/design/half-inch-copper.json");

  private final Catalogue catalogue;
  private final String base;

  DesignSheetTest() throws IOException {
    catalogue = Library.shipped();
    base = Files.readString(HALF_INCH);
  }

  private Design design(String text) throws IOException {
    Checked<Design> read = DesignFile.parse(text, catalogue);
    return read.fold(
        (design, notes) -> design,
        problems -> {
          throw new AssertionError(problems);
        });
  }

  private Outcome with(String from, String to, OutcomeId id) throws IOException {
    assertThat(base).contains(from);
    return DesignSheet.of(design(base.replace(from, to))).quantity(id).orElseThrow();
  }

  private static List<String> reason(Outcome quantity) {
    Problem problem = quantity.reason().orElseThrow();
    return List.of(problem.id(), problem.found());
  }

  @Test
  void soundDesignStopsNowhere() throws IOException {
    DesignSheet sheet = DesignSheet.of(design(base));
    assertThat(sheet.stops()).isFalse();
    assertThat(sheet.reasons()).isEmpty();
  }

  @Test
  void everyQuantityOfThePlatedBatteryDesignIsThere() throws IOException {
    Design gold = design(base.replace("bare-polished-copper", "gold"));
    List<OutcomeId> ids = DesignSheet.of(gold).quantities().stream().map(Outcome::id).toList();
    assertThat(ids).containsExactly(OutcomeId.values());
  }

  @Test
  void powerBandIsThatOfSupplyAndResistor() throws IOException {
    String plain = base.replace(", \"cable\": \"copper-28awg\", \"cable_length_m\": 0.5", "");
    Interval power = DesignSheet.of(design(plain)).quantity("heater_power_W").orElseThrow().value();
    assertThat(power.nominal()).isCloseTo(0.25, within(1e-12));
    // dP/P = 2 dV/V − dR/R: √(4² + 1²) % of a quarter of a watt
    assertThat(power.half() / power.nominal()).isCloseTo(Math.hypot(0.04, 0.01), within(3e-4));
  }

  @Test
  void carbonFilmGivesMorePowerWhereItIsWarmAndItsCoefficientIsInTheBudget() throws IOException {
    String carbon = base.replace("metal-film-half-watt", "carbon-film-half-watt");
    carbon = carbon.replace("\"bore_mm\": 3.3", "\"bore_mm\": 4.6");
    DesignSheet sheet = DesignSheet.of(design(carbon));
    double body_C = sheet.quantity(OutcomeId.RESISTOR_TEMPERATURE).orElseThrow().value().nominal();
    double hot_C = sheet.quantity(OutcomeId.RESISTOR_TEMPERATURE).orElseThrow().value().high();
    Interval hot = sheet.quantity(OutcomeId.HEATER_HOT).orElseThrow().value();
    // the middle of −1000 to −150 ppm/K, from 20 °C to the hottest that the body gets
    assertThat(hot.nominal()).isCloseTo(100 * (1 - 575e-6 * (hot_C - 20)), within(1e-9));
    double power = sheet.quantity(OutcomeId.HEATER_POWER).orElseThrow().value().nominal();
    double r = 100 * (1 - 575e-6 * (body_C - 20));
    double cable = sheet.quantity(OutcomeId.CABLE_RESISTANCE).orElseThrow().value().nominal();
    assertThat(power).isCloseTo(25 / ((r + cable) * (r + cable)) * r, within(1e-9));
    assertThat(sheet.budget())
        .extracting(Spread.Line::part)
        .startsWith(Corner.Part.CONVECTION, Corner.Part.SUPPLY)
        .contains(Corner.Part.TEMPCO);
  }

  @Test
  void heatBalanceClosesAlsoWhereThePowerChangesWithTheTemperature() throws IOException {
    String carbon = base.replace("metal-film-half-watt", "carbon-film-half-watt");
    DesignAtCorner model =
        new Spread(design(carbon.replace("\"bore_mm\": 3.3", "\"bore_mm\": 4.6"))).nominal();
    for (double u : new double[] {0, 0.05, 0.5, 3}) {
      double lost = model.balance().loss_W(model.balance().pair().heated(), model.delta_K(u), u);
      assertThat(lost / model.power_W(u)).isCloseTo(1, within(1e-9));
    }
    assertThat(model.power_W(0)).isGreaterThan(model.power_W(3));
  }

  @Test
  void readingOfTheCurrentMayBeTakenColdOrWarm() throws IOException {
    DesignSheet sheet = DesignSheet.of(design(base));
    double low = sheet.quantity("current_low_mA").orElseThrow().value().nominal();
    double high = sheet.quantity("current_high_mA").orElseThrow().value().nominal();
    Interval warm = sheet.quantity("heater_current_mA").orElseThrow().value();
    assertThat(low).isLessThanOrEqualTo(warm.low());
    assertThat(high).isGreaterThanOrEqualTo(warm.high());
  }

  @Test
  void warmUpAndCoolDownFollowedInTimeLieOnEitherSideOfFiveTimeConstants() throws IOException {
    DesignSheet sheet = DesignSheet.of(design(base));
    double five = nominal(sheet, OutcomeId.WARM_UP_TIME);
    double up = nominal(sheet, OutcomeId.WARM_UP_FOLLOWED);
    double down = nominal(sheet, OutcomeId.COOL_DOWN_FOLLOWED);
    // ln 100 = 4.6 time constants if the loss per kelvin were constant; it grows with delta
    assertThat(up).isLessThan(4.6 / 5 * five);
    assertThat(down).isGreaterThan(five);
    List<CoursePoint> course = sheet.course();
    assertThat(course.get(0).warming_K()).isZero();
    assertThat(course.get(course.size() - 1).warming_K())
        .isCloseTo(nominal(sheet, OutcomeId.STILL_DELTA), within(0.02));
    for (int i = 1; i < course.size(); i++) {
      assertThat(course.get(i).warming_K()).isGreaterThan(course.get(i - 1).warming_K());
      assertThat(course.get(i).cooling_K()).isLessThan(course.get(i - 1).cooling_K());
    }
  }

  @Test
  void unequalBallsFollowWarmingAirApart() throws IOException {
    Outcome drift = DesignSheet.of(design(base)).quantity("unequal_drift_K").orElseThrow();
    assertThat(drift.value().nominal()).isBetween(0.02, 0.5);
    // a reference ball drilled deeper is lighter and follows more quickly
    Outcome lighter =
        with(
            "\"reference_bore_depth_mm\": 9.5",
            "\"reference_bore_depth_mm\": 10.9",
            OutcomeId.UNEQUAL_DRIFT);
    assertThat(lighter.value().nominal()).isLessThan(drift.value().nominal());
  }

  private static double nominal(DesignSheet sheet, OutcomeId id) {
    return sheet.quantity(id).orElseThrow().value().nominal();
  }

  @Test
  void everyResultThatRestsOnTheAirSaysWhenTheAirIsOutsideItsRange() throws IOException {
    String high = base.replace("\"pressure_hPa\": 1013.25", "\"altitude_m\": 5000");
    DesignSheet sheet = DesignSheet.of(design(high));
    for (OutcomeId id :
        List.of(
            OutcomeId.AIR_KINEMATIC_VISCOSITY,
            OutcomeId.STILL_DELTA,
            OutcomeId.DELTA_AT_1,
            OutcomeId.TIME_CONSTANT_STILL,
            OutcomeId.WARM_UP_FOLLOWED,
            OutcomeId.SIGNAL_STILL,
            OutcomeId.SMALLEST_SPEED)) {
      assertThat(reason(sheet.quantity(id).orElseThrow())).as(id.id()).contains("range.air");
    }
    assertThat(sheet.reasons()).extracting(Problem::id).containsOnlyOnce("range.air");
    assertThat(sheet.curve()).noneMatch(CurvePoint::inRange);
    // 4 150 m is just within 60 kPa
    String within = base.replace("\"pressure_hPa\": 1013.25", "\"altitude_m\": 4150");
    assertThat(DesignSheet.of(design(within)).reasons())
        .extracting(Problem::id)
        .doesNotContain("range.air");
  }

  @Test
  void altitudeMakesTheBallWarmerAndTheSlowEndSlower() throws IOException {
    String high = base.replace("\"pressure_hPa\": 1013.25", "\"altitude_m\": 3000");
    DesignSheet there = DesignSheet.of(design(high));
    DesignSheet here = DesignSheet.of(design(base));
    assertThat(nominal(there, OutcomeId.STILL_DELTA))
        .isGreaterThan(nominal(here, OutcomeId.STILL_DELTA));
    assertThat(nominal(there, OutcomeId.AIR_DENSITY))
        .isLessThan(0.75 * nominal(here, OutcomeId.AIR_DENSITY));
  }

  @Test
  void cableTakesEightPercentOfThePowerOverTenMetres() throws IOException {
    Outcome power =
        with("\"cable_length_m\": 0.5", "\"cable_length_m\": 10", OutcomeId.HEATER_POWER);
    assertThat(power.value().nominal() / 0.25).isCloseTo(0.92, within(1e-3));
  }

  @Test
  void drilledBallWeighsTheBlankLessItsHole() throws IOException {
    DesignSheet sheet =
        DesignSheet.of(design(base.replace("\"bore_mm\": 3.3", "\"bore_mm\": 3.2")));
    double blank = sheet.quantity("ball_mass_g").orElseThrow().value().nominal();
    double heated = sheet.quantity("heated_ball_mass_g").orElseThrow().value().nominal();
    double reference = sheet.quantity("reference_ball_mass_g").orElseThrow().value().nominal();
    double perMm = sheet.quantity("bore_mass_per_mm_g").orElseThrow().value().nominal();
    // exact volume of a sphere with a cylinder through it: π/6·(D² − d²)^(3/2)
    double left = Math.PI / 6 * Math.pow(12.7 * 12.7 - 3.2 * 3.2, 1.5) * 1e-3 * 8.935;
    assertThat(heated).isCloseTo(left, within(1e-3));
    assertThat(perMm).isCloseTo(0.07, within(0.005));
    assertThat((reference - heated) / blank).isGreaterThan(0.02);
  }

  @Test
  void bodyWithItsLeadFoldedBackDoesNotGoIntoThreeMillimetres() throws IOException {
    Outcome fit = with("\"bore_mm\": 3.3", "\"bore_mm\": 3.0", OutcomeId.BORE_CLEARANCE);
    assertThat(fit.verdict()).isEqualTo(DesignVerdict.STOP);
    assertThat(reason(fit)).containsExactly("design.bore-too-narrow", "3");
    assertThat(fit.reason().orElseThrow().details()).first().isEqualTo("3.2");
  }

  @Test
  void exceededRatingStopsAndNamesWhatWouldDo() throws IOException {
    Outcome rating =
        with("metal-film-half-watt", "metal-film-quarter-watt", OutcomeId.HEATER_RATING_DERATED);
    assertThat(rating.verdict()).isEqualTo(DesignVerdict.STOP);
    List<String> details = rating.reason().orElseThrow().details();
    double gentler_ohm = Double.parseDouble(details.get(3));
    assertThat(ESeries.E24.has(gentler_ohm)).isTrue();
    Outcome again =
        DesignSheet.of(
                design(
                    base.replace("metal-film-half-watt", "metal-film-quarter-watt")
                        .replace("\"resistance_ohm\": 100", "\"resistance_ohm\": " + gentler_ohm)))
            .quantity(OutcomeId.HEATER_RATING_DERATED)
            .orElseThrow();
    assertThat(again.verdict()).isEqualTo(DesignVerdict.GOOD);
  }

  @Test
  void batteryBelowTheDropOutStops() throws IOException {
    Outcome time = with("9v-alkaline", "4xaa-alkaline", OutcomeId.BATTERY_TIME);
    assertThat(time.verdict()).isEqualTo(DesignVerdict.STOP);
    assertThat(reason(time)).containsExactly("design.below-dropout", "6.4");
  }

  @Test
  void thickCopperLeadsTakeAThirdOfTheHeatAndAThinnerWireIsNamed() throws IOException {
    Outcome share = with("copper-36awg", "copper-22awg", OutcomeId.LEAD_LOSS_SHARE);
    assertThat(share.value().nominal()).isGreaterThan(33);
    assertThat(reason(share)).contains("design.lead-loss");
    assertThat(share.reason().orElseThrow().details().get(1)).startsWith("AWG 3");
  }

  @Test
  void bandsHoldTheFormOfTheModel() throws IOException {
    DesignSheet sheet = DesignSheet.of(design(base));
    Interval speed = sheet.quantity(OutcomeId.SMALLEST_SPEED).orElseThrow().value();

    // an ordinary room: a draught of 10 to 20 mm/s hides every speed below it
    assertThat(speed.low()).isBetween(0.010, 0.018);
    assertThat(speed.high()).isBetween(0.025, 0.045);
    Interval delta = sheet.quantity(OutcomeId.DELTA_AT_1).orElseThrow().value();
    assertThat(delta.high() / delta.nominal()).isGreaterThan(1.08);
    assertThat(sheet.budget())
        .extracting(Spread.Line::part)
        .contains(Corner.Part.MIXING, Corner.Part.WIRE);
  }

  @Test
  void heatLostThroughLeadsNeverMakesTheSmallestSpeedSmaller() throws IOException {
    double before = 0;
    for (String wire : List.of("36", "32", "28", "24", "22")) {
      Interval speed =
          with("copper-36awg", "copper-" + wire + "awg", OutcomeId.SMALLEST_SPEED).value();
      assertThat(speed.nominal()).as("AWG %s", wire).isGreaterThan(before);
      before = speed.nominal();
    }
  }

  @Test
  void shorterLeadsLoseMore() throws IOException {
    Outcome usual = DesignSheet.of(design(base)).quantity(OutcomeId.LEAD_LOSS).orElseThrow();
    Outcome shorter = with("\"lead_length_mm\": 60", "\"lead_length_mm\": 5", OutcomeId.LEAD_LOSS);
    assertThat(shorter.value().nominal()).isGreaterThan(1.3 * usual.value().nominal());
  }

  @Test
  void whatATeacherAllowsIsColderThanWhatAnAdultMayTouch() throws IOException {
    Outcome hot = with("\"indoors\"", "\"classroom\"", OutcomeId.HEATED_BALL_TEMPERATURE);
    assertThat(hot.verdict()).isEqualTo(DesignVerdict.STOP);
    String ohm = hot.reason().orElseThrow().details().get(3);
    String cooler =
        base.replace("\"indoors\"", "\"classroom\"")
            .replace("\"resistance_ohm\": 100", "\"resistance_ohm\": " + ohm);
    assertThat(DesignSheet.of(design(cooler)).stops()).isFalse();
  }

  @Test
  void sunCountsWhereSomeoneMayReachTheBall() throws IOException {
    double shaded = nominal(DesignSheet.of(design(base)), OutcomeId.HEATED_BALL_TEMPERATURE);
    Outcome sunny = with("\"indoors\"", "\"reachable\"", OutcomeId.HEATED_BALL_TEMPERATURE);
    assertThat(sunny.verdict()).isEqualTo(DesignVerdict.STOP);
    // polished copper takes up a fifth to two fifths of 1000 W/m² on 127 mm²
    assertThat(sunny.value().nominal() - shaded).isBetween(1.5, 12.0);
  }

  @Test
  void adviceInHotAirIsAUsefulHeaterAndAGuard() throws IOException {
    Outcome hot =
        with("\"temperature_C\": 20", "\"temperature_C\": 59", OutcomeId.HEATED_BALL_TEMPERATURE);
    assertThat(reason(hot)).contains("design.hot-to-touch-always");
    assertThat(Double.parseDouble(hot.reason().orElseThrow().details().get(3))).isLessThan(1000);
  }

  @Test
  void hotBallNamesAPowerThatStaysBelowTheThreshold() throws IOException {
    Outcome hot = with("\"contact_s\": 4", "\"contact_s\": 600", OutcomeId.HEATED_BALL_TEMPERATURE);
    assertThat(reason(hot)).contains("design.hot-to-touch");
    String ohm = hot.reason().orElseThrow().details().get(3);
    Outcome cooler =
        DesignSheet.of(
                design(
                    base.replace("\"contact_s\": 4", "\"contact_s\": 600")
                        .replace("\"resistance_ohm\": 100", "\"resistance_ohm\": " + ohm)))
            .quantity(OutcomeId.HEATED_BALL_TEMPERATURE)
            .orElseThrow();
    assertThat(cooler.verdict()).isEqualTo(DesignVerdict.GOOD);
  }

  @Test
  void signalBeyondTheRangeStopsAndTheGainNamedFits() throws IOException {
    Outcome share =
        with(
            "\"logger\": \"logger-24bit-256mV\"",
            "\"logger\": \"logger-24bit-256mV\", \"gain\": 300",
            OutcomeId.RANGE_SHARE);
    assertThat(share.verdict()).isEqualTo(DesignVerdict.STOP);
    double gain = Double.parseDouble(share.reason().orElseThrow().details().get(1));
    assertThat(share.value().high() * gain / 300).isLessThan(100);
  }

  @Test
  void aLoggerTooSmallWithoutAnyGainNamesTheRangeThatFits() throws IOException {
    String logger =
        "\"logger\": {\"name\": \"tiny\", \"range_low_mV\": -1, \"range_high_mV\": 1, \"bits\": 16,"
            + " \"noise_uV\": 1, \"offset_uV\": 5}";
    Outcome share = with("\"logger\": \"logger-24bit-256mV\"", logger, OutcomeId.RANGE_SHARE);
    assertThat(share.verdict()).isEqualTo(DesignVerdict.STOP);
    assertThat(reason(share)).contains("design.range-too-small");
    double enough_mV = Double.parseDouble(share.reason().orElseThrow().details().get(1));
    assertThat(enough_mV).isGreaterThan(share.value().high() / 100);
  }

  @Test
  void schoolLoggerCannotTellTheSlowEndAndIsToBlame() throws IOException {
    Outcome speed = with("logger-24bit-256mV", "logger-12bit-2500mV", OutcomeId.SMALLEST_SPEED);
    assertThat(reason(speed)).contains("design.smallest-speed-logger");
    assertThat(speed.value().nominal()).isGreaterThan(0.3);
  }

  @Test
  void sunIsJudgedOnlyWhereTheSunShines() throws IOException {
    assertThat(DesignSheet.of(design(base)).quantity(OutcomeId.SUN_SHARE).orElseThrow().verdict())
        .isEqualTo(DesignVerdict.PLAIN);
    Outcome sunny = with("\"indoors\"", "\"sun\"", OutcomeId.SUN_SHARE);
    assertThat(reason(sunny)).contains("design.sun");
  }

  @Test
  void whatIsNotDepositedHasNoTime() throws IOException {
    String bare = base.replace("\"bare-polished-copper\"", "\"gold\", \"plating\": {%s}");
    DesignSheet nickel = DesignSheet.of(design(bare.formatted("\"gold_um\": 0")));
    assertThat(nickel.quantity(OutcomeId.PLATING_GOLD_TIME)).isEmpty();
    assertThat(nickel.quantity(OutcomeId.PLATING_NICKEL_TIME)).isPresent();
    DesignSheet gold = DesignSheet.of(design(bare.formatted("\"nickel_um\": 0")));
    assertThat(gold.quantity(OutcomeId.PLATING_NICKEL_TIME)).isEmpty();
    assertThat(nominal(gold, OutcomeId.PLATING_CHARGE)).isCloseTo(2.395, within(0.001));
  }

  /** The slopes of the jar are what the same design gives in other air. */
  @Test
  void theJarsSlopesAreThoseOfTheDesignInOtherAir() throws IOException {
    DesignSheet here = DesignSheet.of(design(base));
    double still = nominal(here, OutcomeId.JAR_DELTA);
    DesignSheet warmer =
        DesignSheet.of(design(base.replace("\"temperature_C\": 20", "\"temperature_C\": 25")));
    assertThat(nominal(here, OutcomeId.JAR_SLOPE))
        .isCloseTo((nominal(warmer, OutcomeId.STILL_DELTA) - still) / 5, within(1e-5));
    DesignSheet thinner =
        DesignSheet.of(
            design(base.replace("\"pressure_hPa\": 1013.25", "\"pressure_hPa\": 963.25")));
    assertThat(nominal(here, OutcomeId.JAR_PRESSURE_SLOPE))
        .isCloseTo((nominal(thinner, OutcomeId.STILL_DELTA) - still) / -50, within(1e-5));
  }

  @Test
  void aluminiumFromAPlaterIsTakenWithANote() throws IOException {
    String aluminium =
        base.replace("\"metal\": \"copper\"", "\"metal\": \"aluminium\"")
            .replace("bare-polished-copper", "nickel");
    Outcome time =
        DesignSheet.of(design(aluminium)).quantity(OutcomeId.PLATING_NICKEL_TIME).orElseThrow();
    assertThat(reason(time)).contains("design.zincate");
  }

  @Test
  void aluminiumIsQuickerThanCopperByAQuarterToAThird() throws IOException {
    double copper = tau(base);
    double aluminium =
        tau(
            base.replace("\"metal\": \"copper\"", "\"metal\": \"aluminium\"")
                .replace("bare-polished-copper", "bare-polished-aluminium"));
    assertThat(1 - aluminium / copper).isBetween(0.22, 0.34);
  }

  private double tau(String text) throws IOException {
    return DesignSheet.of(design(text))
        .quantity(OutcomeId.TIME_CONSTANT_AT_3)
        .orElseThrow()
        .value()
        .nominal();
  }

  @Test
  void coldAirIsSaidToBeOutsideTheDensityEquation() throws IOException {
    Outcome density = with("\"temperature_C\": 20", "\"temperature_C\": 5", OutcomeId.AIR_DENSITY);
    assertThat(reason(density)).contains("range.cipm-2007");
  }

  @Test
  void budgetNamesConvectionAndSupplyFirst() throws IOException {
    List<Spread.Line> budget = DesignSheet.of(design(base)).budget();
    assertThat(budget)
        .extracting(Spread.Line::part)
        .startsWith(Corner.Part.CONVECTION, Corner.Part.SUPPLY, Corner.Part.WIRE);
  }

  @Test
  void designComesBackFromItsOwnText() throws IOException {
    Design gold = design(base.replace("bare-polished-copper", "gold"));
    Checked<Design> again = DesignFile.parse(DesignFile.text(gold), catalogue);
    assertThat(again.problems()).isEmpty();
    List<Outcome> before = DesignSheet.of(gold).quantities();
    List<Outcome> after = DesignSheet.of(again.fold((d, n) -> d, p -> gold)).quantities();
    for (int i = 0; i < before.size(); i++) {
      double value = before.get(i).value().nominal();
      assertThat(after.get(i).value().nominal()).isCloseTo(value, within(1e-7 * Math.abs(value)));
    }
  }
}
