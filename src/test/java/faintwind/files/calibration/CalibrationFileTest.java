package faintwind.files.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import faintwind.calibration.BuildAgreement;
import faintwind.calibration.BuildQuantity;
import faintwind.calibration.BuildSuspect;
import faintwind.calibration.Calibration;
import faintwind.calibration.Covariance;
import faintwind.calibration.Coverage;
import faintwind.calibration.EnScore;
import faintwind.calibration.Evidence;
import faintwind.calibration.FormulaFit;
import faintwind.calibration.Measured;
import faintwind.calibration.Origin;
import faintwind.calibration.Parameter;
import faintwind.calibration.Performance;
import faintwind.calibration.Pooled;
import faintwind.calibration.RunOutcome;
import faintwind.calibration.response.ParameterPrior;
import faintwind.calibration.response.ResponseModel;
import faintwind.calibration.response.ThermalPath;
import faintwind.calibration.run.SignalChain;
import faintwind.calibration.run.SignalPath;
import faintwind.calibration.run.SignalUnit;
import faintwind.files.Sha256;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.physics.AirState;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CalibrationFileTest {
  private static final List<Double> VALUES =
      List.of(0.0, 0.004, 0.5, 0.07, 0.03, 20.0, 4.0, 0.0, 0.0, 0.0012);
  private static final Path GOLDEN = Path.of("src/test/resources/golden/calibration.json");

  @TempDir Path folder;

  @Test
  void everyNumberComesBackExactly() throws IOException {
    Random random = new Random(20_261_125);
    for (int i = 0; i < 50; i++) {
      double a = random.nextGaussian() * Math.pow(10, random.nextInt(30) - 15);
      Calibration written = calibration(a, random.nextDouble() * 1e-9);
      Path file = folder.resolve("cal.json");
      CalibrationFile.write(file, written);
      Calibration read = ok(CalibrationFile.read(file, "cal.json"));
      assertThat(read)
          .usingRecursiveComparison()
          .ignoringFields("formula.covariance")
          .isEqualTo(written);
      assertThat(read.formula().covariance().rows())
          .isEqualTo(written.formula().covariance().rows());
    }
  }

  @Test
  void fileLooksAsItDid() throws IOException {
    byte[] bytes = CalibrationFile.bytes(calibration(0.0123, 1e-6));
    if (Boolean.getBoolean("golden.write")) {
      Files.write(GOLDEN, bytes);
    }
    assertThat(new String(bytes, StandardCharsets.UTF_8)).isEqualTo(Files.readString(GOLDEN));
  }

  @Test
  void keysOfALaterMinorVersionArePassedOver() throws IOException {
    String text = text();
    String later =
        text.replace("faintwind-calibration/1", "faintwind-calibration/1.3")
            .replace("\"signal_unit\"", "\"mood\" : {\"of\" : \"cellar\"},\n  \"signal_unit\"");
    assertThat(later).isNotEqualTo(text);
    assertThat(read(later).isOk()).isTrue();
  }

  @Test
  void aFileThatDoesNotNameTheBallIsReadWithTheUsualOneAndANote() throws IOException {
    Checked<Calibration> read = read(text().replaceFirst(" *\"ball_diameter_m\".*\n", ""));
    assertThat(read.problems())
        .extracting(p -> p.id() + " " + p.found())
        .containsExactly("calibration.no-diameter 12.7");
    assertThat(ok(read).formula().ball_m()).isEmpty();
    assertThat(ok(read).formula().diameter_m()).isEqualTo(0.0127);
  }

  @Test
  void theBallIsKeptAndAWrongOneIsRefused() throws IOException {
    assertThat(read(text()).problems()).isEmpty();
    String large = text().replace("\"ball_diameter_m\" : 0.0127", "\"ball_diameter_m\" : 0.0159");
    assertThat(ok(read(large)).formula().diameter_m()).isEqualTo(0.0159);
    assertThat(read(large.replace("0.0159", "0")).problems())
        .extracting(p -> p.id() + " " + p.where().column().orElse(""))
        .containsExactly("json.schema ball_diameter_m");
  }

  @Test
  void newerMajorVersionIsRefused() throws IOException {
    String text = text().replace("calibration/1\"", "calibration/2\"");
    assertThat(read(text).problems()).extracting(Problem::id).containsExactly("calibration.newer");
  }

  @Test
  void allPlacesThatDoNotFitTheSchemaAreTold() throws IOException {
    String text =
        text()
            .replace("\"signal_unit\" : \"delta_K\"", "\"signal_unit\" : \"degF\"")
            .replace("\"rows\" : 1234", "\"rows\" : \"many\"")
            .replace("\"relative_humidity\" : 0.5", "\"relative_humidity\" : 50");
    assertThat(read(text).problems())
        .extracting(p -> p.id() + " " + p.where().column().orElse(""))
        .containsExactly(
            "json.schema reference_air.relative_humidity",
            "json.schema residuals.rows",
            "json.schema signal_unit");
  }

  @Test
  void covarianceThatDoesNotBelongToTheParametersIsRefused() throws IOException {
    String text = text().replace("\"order\" : [ \"a\", \"b\",", "\"order\" : [ \"b\",");
    assertThat(read(text).problems())
        .extracting(Problem::id)
        .containsExactly(
            "calibration.parameters", "calibration.order", "calibration.covariance-size");
  }

  @Test
  void endlessNumberIsRefused() throws IOException {
    String text = text().replace("\"floor_m_s\" : 0.045", "\"floor_m_s\" : 1e999");
    assertThat(read(text).problems()).extracting(Problem::id).containsExactly("json.number");
  }

  @Test
  void brokenJsonIsRefusedWithItsLine() throws IOException {
    Checked<Calibration> read = read("{\n \"format\": \"faintwind-calibration/1\",\n oops\n}");
    assertThat(read.problems())
        .extracting(p -> p.id() + " " + p.where().line().orElse(0))
        .containsExactly("json.syntax 3");
  }

  @Test
  void calibrationWithANumberThatIsNotFiniteIsNeverWritten() {
    Path file = folder.resolve("cal.json");
    assertThatThrownBy(() -> CalibrationFile.write(file, calibration(Double.NaN, 1e-6)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("parameters.a.value");
    assertThat(file).doesNotExist();
  }

  private Checked<Calibration> read(String text) throws IOException {
    Path file = folder.resolve("x.json");
    Files.writeString(file, text);
    return CalibrationFile.read(file, "x.json");
  }

  private static String text() throws IOException {
    return new String(CalibrationFile.bytes(calibration(0.0123, 1e-6)), StandardCharsets.UTF_8);
  }

  private static Calibration ok(Checked<Calibration> read) {
    return read.fold(
        (value, notes) -> value,
        problems -> {
          throw new AssertionError(problems.toString());
        });
  }

  private static Calibration calibration(double a, double variance) {
    SignalChain chain =
        new SignalChain(
            SignalChain.Input.VOLTAGE,
            Optional.of("K"),
            OptionalDouble.of(100),
            OptionalDouble.empty(),
            -1,
            new SignalChain.Resolution(
                OptionalDouble.of(2500), OptionalInt.of(12), OptionalDouble.empty()));
    FormulaFit formula = formula(a, variance);
    return new Calibration(
        new Origin(
            "cellar-1",
            OffsetDateTime.parse("2026-11-25T14:30:00+01:00"),
            "0.1.0",
            Map.of("runs.csv", Sha256.of(new byte[0])),
            Optional.of("ab".repeat(32)),
            Optional.of(measured()),
            Optional.of(pooled())),
        new SignalPath(SignalUnit.DELTA_K, chain, Optional.of("K"), 1, OptionalDouble.of(5.0123)),
        formula,
        new Coverage(0.1, 2.97, 6.5, 31.2, true, Optional.empty()),
        evidence(),
        performance(),
        List.of(
            Problem.warning("runs.turns-not-whole", Where.run("spin01"), "10.5"),
            Problem.warning("runs.units-differ", Where.NOWHERE, "x")));
  }

  private static Pooled pooled() {
    return new Pooled(
        List.of(new Pooled.Other("cellar-2", "cd".repeat(32))),
        List.of(new Parameter("tilt", 0.002, 0.003, "1")));
  }

  private static FormulaFit formula(double a, double variance) {
    AirState air = new AirState(294.25, 99_910, 0.5);
    ResponseModel model = ResponseModel.of("king", air, 0.0127);
    List<ParameterPrior> quantities = new ArrayList<>(model.quantities());
    quantities.addAll(ThermalPath.quantities("K"));
    List<Parameter> parameters = new ArrayList<>();
    double[][] matrix = new double[quantities.size()][quantities.size()];
    for (int i = 0; i < quantities.size(); i++) {
      ParameterPrior quantity = quantities.get(i);
      double value = i == 0 ? a : VALUES.get(i);
      parameters.add(new Parameter(quantity.name(), value, 0.1 + 0.2, quantity.unit()));
      matrix[i][i] = i == 0 ? variance : 1e-300;
    }
    matrix[0][1] = -variance / 3;
    matrix[1][0] = -variance / 3;
    return new FormulaFit(
        "king",
        model.equationKey(),
        parameters,
        Covariance.of(matrix),
        air,
        OptionalDouble.of(0.0127));
  }

  private static Evidence evidence() {
    return new Evidence(
        new Evidence.ResidualStatistics(0.01, 0.002, 0.009, 45, 77.7, 1234),
        List.of(
            new RunOutcome(
                "still", OptionalDouble.empty(), OptionalDouble.empty(), 0.0123, true, ""),
            new RunOutcome(
                "spin01", OptionalDouble.of(0.1), OptionalDouble.of(1e-3), -0.02, true, "")),
        List.of(new Evidence.LeftOut("spin01", 0.1, 0.11, 0.01)),
        List.of(new Evidence.Candidate("king", -12.5, 0.1, true)),
        Optional.of(new Evidence.MonteCarloSummary(200, 1, 42, 1.01)),
        Optional.of(agreement()));
  }

  private static Measured measured() {
    return new Measured(
        OffsetDateTime.parse("2026-11-25T09:10:00+01:00"),
        OffsetDateTime.parse("2026-11-25T12:40:00+01:00"),
        Measured.Basis.RECORDINGS,
        Map.of(Measured.By.OPERATOR, "Made-up builder", Measured.By.PLACE, "the cellar"));
  }

  private static BuildAgreement agreement() {
    return new BuildAgreement(
        List.of(
            new BuildAgreement.Row(
                BuildQuantity.HEATING, 0.0812, 0.0004, 0.0664, 0.0031, new EnScore(2.1), true),
            new BuildAgreement.Row(
                BuildQuantity.SIGNAL_PER_K, 1.223, 0.05, 1, 0.03, new EnScore(1.9), false)),
        List.of(new BuildAgreement.Suspicion(BuildSuspect.METAL, 0.82, true, 0.75)));
  }

  private static Performance performance() {
    return new Performance(
        0.045,
        31.1,
        0.002,
        1,
        0.01,
        List.of(
            new Performance.AtSpeed(
                0.1, 0.004, 25, List.of(new Performance.BudgetShare("formula", 0.001)))));
  }
}
