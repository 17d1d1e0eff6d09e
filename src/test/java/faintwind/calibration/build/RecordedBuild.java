package faintwind.calibration.build;

import faintwind.calibration.run.BuildFacts;
import faintwind.calibration.run.SignalUnit;
import faintwind.calibration.run.Uncertain;
import faintwind.calibration.virtual.VirtualBuild;
import java.util.Optional;
import java.util.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/**
 * What the builder of a made-up instrument would have on record: weighed and measured with a hand
 * meter, the rest as designed. The errors are drawn from the uncertainties that are stated.
 */
public final class RecordedBuild {
  private static final double COPPER_J_KGK = 385;
  private static final double ALUMINIUM_J_KGK = 897;
  private static final double LIMIT_J_K = 3.2;

  /** Glue, coat and resistor as drawn: 0.05 to 0.12 J/K and the resistor's node; middle here. */
  private static final double IN_THE_HOLE_J_K = 0.085;

  private final RandomGenerator random;
  private final VirtualBuild build;

  private RecordedBuild(VirtualBuild build, long seed) {
    this.build = build;
    Well19937c well = new Well19937c(seed);
    this.random = well::nextLong;
  }

  /** The record of a build; the same seed gives the same record. */
  public static BuildFacts of(VirtualBuild build, long seed) {
    return new RecordedBuild(build, seed).facts();
  }

  private BuildFacts facts() {
    double heat = build.heated().capacity_J_K() > LIMIT_J_K ? COPPER_J_KGK : ALUMINIUM_J_KGK;
    double mass = (build.heated().capacity_J_K() - IN_THE_HOLE_J_K) / heat;
    return new BuildFacts(
        Optional.of(Uncertain.of(0.0127, 0.0001)),
        Optional.of(measured(mass, 1e-5)),
        Optional.of(Uncertain.of(heat, 0.02 * heat)),
        Optional.of(measured(build.heater().resistance_ohm(), 0.4)),
        Optional.of(measured(build.heater().supply_V(), 0.004 * build.heater().supply_V())),
        Optional.of(Uncertain.of(0.07, 0.03)),
        new BuildFacts.Wires(
            Optional.of(measured(build.heated().leads_W_K(), 0.3 * build.heated().leads_W_K())),
            Optional.of(Uncertain.of(designed_V_K()))));
  }

  /** Thermocouple and amplifier as bought; of a chain in kelvin it is not asked. */
  private double designed_V_K() {
    double gain = build.chain().unit() == SignalUnit.SIGNAL_MV ? 100 : 1;
    return 1e-6 * build.chain().wire().slope_uV_K() * gain;
  }

  private Uncertain measured(double truth, double u) {
    double z = Math.max(-2, Math.min(2, random.nextGaussian()));
    return Uncertain.of(truth + u * z, u);
  }
}
