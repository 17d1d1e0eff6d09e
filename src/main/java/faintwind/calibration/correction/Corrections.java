package faintwind.calibration.correction;

import faintwind.calibration.Calibration;
import faintwind.calibration.Performance;
import faintwind.calibration.RunOutcome;
import faintwind.calibration.correction.Correction.Basis;
import faintwind.calibration.correction.Correction.Source;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.Formula;
import faintwind.calibration.run.ArmSpeed;
import faintwind.calibration.run.ArmTurning;
import faintwind.calibration.run.Direction;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunKind;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.run.Series;
import faintwind.calibration.run.Uncertain;
import faintwind.physics.AirState;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.stat.StatUtils;

/** Every correction of a calibration's runs, told apart. */
public final class Corrections {
  private static final double MIDDLE_M_S = 0.5;

  /** A thermometer beside the table (common practice, no source). */
  private static final double U_AIR_K = 0.5;

  /** Draught of a quiet room, relative, where no second still recording shows it (own choice). */
  private static final double QUIET_ROOM = 0.005;

  private final RunSet set;
  private final Calibration calibration;

  private Corrections(RunSet set, Calibration calibration) {
    this.set = set;
    this.calibration = calibration;
  }

  /**
   * The corrections.
   *
   * @param set the runs that the calibration was made from
   * @param calibration what became of them
   */
  public static List<Correction> of(RunSet set, Calibration calibration) {
    Corrections all = new Corrections(set, calibration);
    List<Correction> found = new ArrayList<>();
    all.carried().ifPresent(found::add);
    all.radius().ifPresent(found::add);
    found.add(all.draught());
    all.direction().ifPresent(found::add);
    found.add(all.airState());
    return found;
  }

  private List<Run> spins() {
    return set.runs().stream().filter(run -> run.kind() == RunKind.SPIN).toList();
  }

  private Optional<RunOutcome> outcome(Run run) {
    return calibration.evidence().runs().stream()
        .filter(found -> found.run().equals(run.name()))
        .findFirst();
  }

  /** Air speed over arm speed less one, as the fit took it; its uncertainty from the budget. */
  private Optional<Correction> carried() {
    double sum = 0;
    int count = 0;
    for (Run run : spins()) {
      Optional<RunOutcome> outcome = outcome(run);
      if (outcome.isPresent() && outcome.get().speed_m_s().isPresent()) {
        double arm = run.arm().orElseThrow().speed_m_s();
        sum += outcome.get().speed_m_s().getAsDouble() / arm - 1;
        count++;
      }
    }
    if (count == 0) {
      return Optional.empty();
    }
    boolean stated = spins().stream().anyMatch(r -> r.arm().orElseThrow().swirlShare().isPresent());
    Basis basis =
        stated
            ? Basis.STATED
            : calibration.coverage().carriedAirShown() ? Basis.SHOWN : Basis.ASSUMED;
    return Optional.of(new Correction(Source.CARRIED, sum / count, carriedU(), basis));
  }

  private double carriedU() {
    Performance.AtSpeed middle =
        calibration.performance().speeds().stream()
            .min(Comparator.comparingDouble(at -> Math.abs(Math.log(at.speed_m_s() / MIDDLE_M_S))))
            .orElseThrow();
    return middle.budget().stream()
        .filter(share -> share.source().equals("budget.carried"))
        .mapToDouble(share -> share.u_m_s() / middle.speed_m_s())
        .sum();
  }

  /** No correction, but an uncertainty that all runs on a radius share. */
  private Optional<Correction> radius() {
    List<ArmTurning> arms = spins().stream().map(r -> r.arm().orElseThrow()).toList();
    boolean stated = arms.stream().allMatch(arm -> arm.radius_m().u().isPresent());
    return arms.stream()
        .map(ArmSpeed::uRadius)
        .max(Double::compare)
        .map(u -> new Correction(Source.RADIUS, 0, u, stated ? Basis.STATED : Basis.ASSUMED));
  }

  /** Half of what the still air after differs from the still air before, in signal at rest. */
  private Correction draught() {
    List<Double> rests = new ArrayList<>();
    for (Run run : set.runs()) {
      Series signal = run.recording().signal();
      if (run.kind() == RunKind.STILL && !signal.isEmpty()) {
        double length_s = signal.last_s() - signal.first_s();
        rests.add(signal.window(signal.last_s() - 0.1 * length_s, signal.last_s()).mean());
      }
    }
    if (rests.size() < 2) {
      return new Correction(Source.DRAUGHT, 0, QUIET_ROOM, Basis.ASSUMED);
    }
    double half = (rests.get(rests.size() - 1) / rests.get(0) - 1) / 2;
    return new Correction(Source.DRAUGHT, 0, Math.abs(half), Basis.SHOWN);
  }

  /** Half the difference of the mean residuals of the two directions. */
  private Optional<Correction> direction() {
    Uncertain clockwise = residual(Direction.CW);
    Uncertain back = residual(Direction.CCW);
    if (clockwise.u().isEmpty() || back.u().isEmpty()) {
      return Optional.empty();
    }
    double half = (clockwise.value() - back.value()) / 2;
    double u = Math.hypot(clockwise.u().getAsDouble(), back.u().getAsDouble()) / 2;
    return Optional.of(new Correction(Source.DIRECTION, half, u, Basis.SHOWN));
  }

  /** Mean residual of a direction; without uncertainty where there are fewer than two runs. */
  private Uncertain residual(Direction direction) {
    double[] residuals =
        spins().stream()
            .filter(run -> run.conditions().direction().filter(d -> d == direction).isPresent())
            .flatMap(run -> outcome(run).stream())
            .mapToDouble(RunOutcome::residual)
            .toArray();
    int n = residuals.length;
    if (n < 2) {
      return Uncertain.of(n == 0 ? 0 : residuals[0]);
    }
    return Uncertain.of(StatUtils.mean(residuals), Math.sqrt(StatUtils.variance(residuals) / n));
  }

  /**
   * The largest change of the speed that the run's own air makes against the calibration's, at half
   * a metre a second; the fit takes it off row by row.
   */
  private Correction airState() {
    AirState reference = calibration.formula().referenceAir();
    double largest = 0;
    for (Run run : spins()) {
      OptionalDouble air_K =
          run.recording()
              .air_K()
              .filter(s -> !s.isEmpty())
              .map(s -> OptionalDouble.of(s.mean()))
              .orElse(run.conditions().air_K());
      if (air_K.isPresent()) {
        double change = change(reference, air_K.getAsDouble() - reference.temperature_K());
        largest = Math.abs(change) > Math.abs(largest) ? change : largest;
      }
    }
    boolean recorded =
        spins().stream()
            .anyMatch(r -> r.recording().air_K().isPresent() || r.conditions().air_K().isPresent());
    double u = Math.abs(change(reference, U_AIR_K));
    return new Correction(Source.AIR_STATE, largest, u, recorded ? Basis.SHOWN : Basis.ASSUMED);
  }

  /** Relative change of the speed read from a signal at rest where the air is warmer. */
  private double change(AirState reference, double warmer_K) {
    Formula formula = Formula.of(calibration);
    OptionalDouble supply = calibration.signal().supply_V();
    AirPoint usual = AirPoint.of(reference);
    AirPoint other = usual.withTemperature(reference.temperature_K() + warmer_K);
    double delta_K = formula.steadyDelta_K(MIDDLE_M_S, supply, other);
    double loss_1_s = formula.heating_K_s(supply) / delta_K;
    return MIDDLE_M_S / formula.speed_m_s(loss_1_s, delta_K, usual) - 1;
  }
}
