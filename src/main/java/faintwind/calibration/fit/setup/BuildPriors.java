package faintwind.calibration.fit.setup;

import faintwind.calibration.build.BuiltHeat;
import faintwind.calibration.fit.numerics.Layout;
import faintwind.calibration.fit.numerics.Unknown;
import faintwind.calibration.fit.numerics.Unknowns;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.PhysicsShaped;
import faintwind.calibration.response.ThermalPath;
import faintwind.calibration.run.BuildFacts;
import faintwind.calibration.run.SignalPath;
import faintwind.calibration.run.SignalUnit;
import faintwind.calibration.run.Uncertain;
import java.util.Optional;

/**
 * Sharpens priors by what is on record of the build, where the signal's scale in kelvin is known:
 * the conduction limit from diameter and heat capacity (loss = 2π D k/C), the heating rate from
 * supply, resistor and heat capacity (V²/(R C)), the leads' loss.
 */
public final class BuildPriors {
  private BuildPriors() {}

  static void sharpen(Setting setting, Layout layout, Unknowns unknowns) {
    if (setting.build().isEmpty() || !scaleKnown(setting.signal())) {
      return;
    }
    BuildFacts build = setting.build().get();
    Optional<Uncertain> capacity = BuiltHeat.capacity_J_K(build);
    if (capacity.isEmpty()) {
      return;
    }
    double c = capacity.get().value();
    double uC = BuiltHeat.relative(capacity.get(), OwnChoices.U_ADDED);
    heating(setting, build, layout, unknowns, Uncertain.of(c, uC));
    if (!layout.model().id().equals(PhysicsShaped.ID)) {
      return;
    }
    build
        .diameter_m()
        .ifPresent(
            d -> {
              AirPoint air = AirPoint.of(setting.referenceAir());
              double k = air.conductivity(air.air_K());
              unknowns.replace(
                  0,
                  Unknown.log(
                      "conduction",
                      2 * Math.PI * d.value() * k / c,
                      Math.hypot(0.02, Math.hypot(BuiltHeat.relative(d, 0.02), uC))));
            });
    build
        .wires()
        .leadLoss_W_K()
        .ifPresent(
            leads ->
                unknowns.replace(
                    3,
                    Unknown.log(
                        "leads",
                        leads.value() / c,
                        Math.hypot(BuiltHeat.relative(leads, OwnChoices.U_DESIGNED_LEADS), uC))));
  }

  private static void heating(
      Setting setting, BuildFacts build, Layout layout, Unknowns unknowns, Uncertain capacity) {
    Optional<Double> volts =
        setting.signal().supply_V().isPresent()
            ? Optional.of(setting.signal().supply_V().getAsDouble())
            : build.supply_V().map(Uncertain::value);
    if (volts.isPresent() && build.heater_ohm().isPresent()) {
      double uV = setting.signal().supply_V().isPresent() ? 0.002 : 0.02;
      Uncertain ohm = build.heater_ohm().get();
      double spread = Math.hypot(2 * uV, BuiltHeat.relative(ohm, 0.01));
      spread =
          Math.hypot(
              Math.hypot(spread, OwnChoices.U_SCALE), capacity.u().orElse(OwnChoices.U_ADDED));
      unknowns.replace(
          layout.path(ThermalPath.HEATING),
          Unknown.log(
              "heating", volts.get() * volts.get() / ohm.value() / capacity.value(), spread));
    }
  }

  /** Whether kelvin follow from the signal without asking the runs. */
  public static boolean scaleKnown(SignalPath signal) {
    return signal.unit() == SignalUnit.DELTA_K
        || (signal.thermocouple().isPresent() && signal.chain().gain().isPresent());
  }
}
