package faintwind.calibration.virtual;

import faintwind.physics.AirState;

/**
 * How strongly moving and warm air cool one made-up ball. Above the conduction limit Nu = 2 the
 * forced part is Whitaker 1972 (0.4 Re^½ + 0.06 Re^⅔) Pr^0.4 (µ/µs)^¼ with properties of the free
 * stream, the natural part Churchill 1983 0.589 Ra^¼ / [1 + (0.469/Pr)^(9/16)]^(4/9) at the film
 * temperature; the two are mixed by powers. Correlations are good to about a tenth, so each has a
 * multiplier.
 *
 * @param forced multiplier of the forced part
 * @param natural multiplier of the natural part
 * @param tilt relative change of the forced part per e-fold of Re, about Re = 500
 * @param mixing exponent of the mixing rule
 */
public record VirtualConvection(double forced, double natural, double tilt, double mixing) {

  /** Heat transfer coefficient, W/(m² K). */
  double coefficient_W_m2K(double diameter_m, double ball_K, AirState air, double speed_m_s) {
    VirtualAir free = VirtualAir.at(air.temperature_K(), air);
    VirtualAir film = VirtualAir.at((ball_K + air.temperature_K()) / 2, air);
    VirtualAir surface = VirtualAir.at(ball_K, air);
    double moved = forced_W_mK(diameter_m * speed_m_s, free, surface);
    double risen = natural_W_mK(diameter_m, ball_K, air, film);
    double mixed = Math.pow(Math.pow(moved, mixing) + Math.pow(risen, mixing), 1 / mixing);
    return (2 * film.conductivity_W_mK() + mixed) / diameter_m;
  }

  private double forced_W_mK(double diameterTimesSpeed_m2_s, VirtualAir free, VirtualAir surface) {
    double re = diameterTimesSpeed_m2_s / free.kinematicViscosity_m2_s();
    if (re < 1e-9) {
      return 0;
    }
    double root = Math.sqrt(re);
    double ratio = free.viscosity_Pa_s() / surface.viscosity_Pa_s();
    double nusselt =
        (0.4 * root + 0.06 * Math.cbrt(re * re))
            * Math.pow(free.prandtl(), 0.4)
            * Math.sqrt(Math.sqrt(ratio));
    return forced * Math.pow(re / 500, tilt) * nusselt * free.conductivity_W_mK();
  }

  private double natural_W_mK(double diameter_m, double ball_K, AirState air, VirtualAir film) {
    double difference_K = Math.abs(ball_K - air.temperature_K());
    double nu2 = film.kinematicViscosity_m2_s() * film.kinematicViscosity_m2_s();
    double film_K = (ball_K + air.temperature_K()) / 2;
    double grashof = 9.81 / film_K * difference_K * Math.pow(diameter_m, 3) / nu2;
    double shape = Math.pow(1 + Math.pow(0.469 / film.prandtl(), 9.0 / 16), 4.0 / 9);
    double nusselt = 0.589 * Math.sqrt(Math.sqrt(grashof * film.prandtl())) / shape;
    return natural * nusselt * film.conductivity_W_mK();
  }
}
