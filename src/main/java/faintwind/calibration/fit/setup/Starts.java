package faintwind.calibration.fit.setup;

import faintwind.calibration.response.ThermalPath;
import java.util.List;

/** Starting points of a fit: what the priors expect, and three that lie in other valleys. */
public final class Starts {
  private Starts() {}

  public static List<double[]> of(Setup setup) {
    double[] expected = new double[setup.unknowns().size()];
    double[] slowHeater = expected.clone();
    slowHeater[setup.layout().path(ThermalPath.HEATER_TIME)] = 1.5;
    slowHeater[setup.layout().path(ThermalPath.SHARE)] = 0.7;
    double[] quickHeater = expected.clone();
    quickHeater[setup.layout().path(ThermalPath.HEATER_TIME)] = -1;
    double[] slowRise = expected.clone();
    slowRise[setup.layout().carriedRise()] = 1.5;
    slowRise[setup.layout().carriedDecay()] = -1;
    return List.of(quickHeater, expected, slowHeater, slowRise);
  }
}
