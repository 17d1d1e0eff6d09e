package faintwind.physics;

import java.util.List;

/**
 * The reference function of a thermocouple type: emf against temperature, junction at 0 °C, as
 * polynomials in °C by pieces, one with an exponential term for type K. Source of the functions:
 * ITS-90, NIST Monograph 175 (1993) and SRD 60, the same as IEC 60584-1:2013; the coefficients
 * arrive as data. Beyond its range the function goes on along its tangent. Immutable; safe from any
 * thread.
 */
public final class Thermocouple {
  private static final double VOLTS_PER_MILLIVOLT = 1e-3;
  private static final double CLOSE_K = 1e-7;
  private static final int MOST_STEPS = 60;

  private final String letter;
  private final Piece[] pieces;

  /**
   * A type from its data.
   *
   * @param letter type letter
   * @param pieces pieces in rising order, each beginning where the one before ends
   * @throws IllegalArgumentException where pieces are missing or do not join
   */
  public Thermocouple(String letter, List<Polynomial> pieces) {
    if (pieces.isEmpty()) {
      throw new IllegalArgumentException("thermocouple " + letter + " has no pieces");
    }
    for (int i = 1; i < pieces.size(); i++) {
      if (pieces.get(i).from_C() != pieces.get(i - 1).to_C()) {
        throw new IllegalArgumentException("thermocouple " + letter + ": piece " + i + " is apart");
      }
    }
    this.letter = letter;
    this.pieces = pieces.stream().map(Piece::new).toArray(Piece[]::new);
  }

  /**
   * One piece as published: emf in mV = Σ c_i·t^i + a0·exp(a1·(t − a2)²).
   *
   * @param from_C lower end, °C
   * @param to_C upper end, °C
   * @param coefficients_mV c_0, c_1 … in mV/°C^i
   * @param exponential a0 in mV, a1 in 1/°C², a2 in °C; empty where there is no such term
   */
  public record Polynomial(
      double from_C, double to_C, List<Double> coefficients_mV, List<Double> exponential) {
    public Polynomial {
      coefficients_mV = List.copyOf(coefficients_mV);
      exponential = List.copyOf(exponential);
      if (!(from_C < to_C) || coefficients_mV.isEmpty()) {
        throw new IllegalArgumentException("piece from " + from_C + " to " + to_C + " °C");
      }
      if (!exponential.isEmpty() && exponential.size() != 3) {
        throw new IllegalArgumentException("exponential term needs a0, a1 and a2");
      }
    }
  }

  public String letter() {
    return letter;
  }

  /** Emf against a junction at 0 °C, V. */
  public double emf_V(double temperature_K) {
    double t = temperature_K - Constants.ZERO_C_K;
    double inside = clamp(t);
    Piece piece = piece(inside);
    double beyond = t == inside ? 0 : (t - inside) * piece.slope_mV(inside);
    return VOLTS_PER_MILLIVOLT * (piece.emf_mV(inside) + beyond);
  }

  /** Sensitivity (Seebeck coefficient) dE/dT, V/K. */
  public double sensitivity_V_K(double temperature_K) {
    double inside = clamp(temperature_K - Constants.ZERO_C_K);
    return VOLTS_PER_MILLIVOLT * piece(inside).slope_mV(inside);
  }

  /** Emf of two junctions in series opposition, V: E(hot) − E(cold). */
  public double differential_V(double hot_K, double cold_K) {
    return emf_V(hot_K) - emf_V(cold_K);
  }

  /** Temperature, K, at an emf against 0 °C; Newton's method to 1e-7 K. */
  public double temperature_K(double emf_V) {
    double t = Constants.ZERO_C_K + 25;
    for (int i = 0; i < MOST_STEPS; i++) {
      double step = (emf_V - emf_V(t)) / sensitivity_V_K(t);
      t += Math.max(-300, Math.min(300, step));
      if (Math.abs(step) < CLOSE_K) {
        return t;
      }
    }
    throw new IllegalArgumentException("type " + letter + ": no temperature for " + emf_V + " V");
  }

  /** Delta, K, that a differential emf stands for when the cold junction is at a temperature. */
  public double delta_K(double differential_V, double cold_K) {
    return temperature_K(differential_V + emf_V(cold_K)) - cold_K;
  }

  private double clamp(double t) {
    return Math.max(pieces[0].from, Math.min(pieces[pieces.length - 1].to, t));
  }

  private Piece piece(double t) {
    int i = 0;
    while (i < pieces.length - 1 && t >= pieces[i].to) {
      i++;
    }
    return pieces[i];
  }

  /** A piece with its numbers unboxed. */
  private static final class Piece {
    private final double from;
    private final double to;
    private final double[] c;
    private final double[] a;

    Piece(Polynomial polynomial) {
      from = polynomial.from_C();
      to = polynomial.to_C();
      c = polynomial.coefficients_mV().stream().mapToDouble(Double::doubleValue).toArray();
      a = polynomial.exponential().stream().mapToDouble(Double::doubleValue).toArray();
    }

    double emf_mV(double t) {
      double sum = 0;
      for (int i = c.length - 1; i >= 0; i--) {
        sum = sum * t + c[i];
      }
      return a.length == 0 ? sum : sum + bump(t);
    }

    double slope_mV(double t) {
      double sum = 0;
      for (int i = c.length - 1; i >= 1; i--) {
        sum = sum * t + i * c[i];
      }
      return a.length == 0 ? sum : sum + 2 * a[1] * (t - a[2]) * bump(t);
    }

    private double bump(double t) {
      double x = t - a[2];
      return a[0] * Math.exp(a[1] * x * x);
    }
  }
}
