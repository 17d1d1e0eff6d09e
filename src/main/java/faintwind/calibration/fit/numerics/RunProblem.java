package faintwind.calibration.fit.numerics;

import faintwind.calibration.fit.squares.Linearised;
import faintwind.calibration.fit.track.Track;
import faintwind.calibration.fit.track.ZeroReading;
import faintwind.calibration.fit.wander.Wander;
import faintwind.calibration.fit.wander.Whitening;
import faintwind.calibration.response.ThermalPath;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.exception.MathIllegalArgumentException;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * The least-squares problem of all recordings at once: weighted residuals of every averaged row, of
 * the zero runs, and of the priors.
 *
 * <p>The rows are many and the unknowns few, so the normal equations are formed row by row and
 * handed on as their Cholesky factor: the optimiser sees a small problem with the same sum of
 * squares, gradient and curvature. The priors are standard normal in the fit's own variables, which
 * keeps the factor well conditioned.
 */
public final class RunProblem {
  /** Residual of a point at which nothing can be computed. */
  static final double WILD = 1e100;

  /** Keeps the factor positive where rounding in the sums would outweigh the priors. */
  private static final double ROUNDING = 1e-14;

  private final Layout layout;
  private final Unknowns unknowns;
  private final List<Track> tracks;
  private final List<ZeroReading> zeros;
  private final List<TrackIntegrator> integrators = new ArrayList<>();
  private final List<double[]> predicted = new ArrayList<>();
  private final List<double[][]> rowsBy = new ArrayList<>();
  private final List<Whitening> whitenings = new ArrayList<>();
  private final List<double[]> signals = new ArrayList<>();
  private final double[] zeroSignals;
  private final double[] priorTargets;

  /** Values of the unknowns at the last {@link #integrate}. */
  private double[] integrated = {};

  public RunProblem(Layout layout, Unknowns unknowns, List<Track> tracks, List<ZeroReading> zeros) {
    this.layout = layout;
    this.unknowns = unknowns;
    this.tracks = List.copyOf(tracks);
    this.zeros = List.copyOf(zeros);
    for (Track track : tracks) {
      TrackIntegrator integrator = new TrackIntegrator(layout, track);
      integrators.add(integrator);
      predicted.add(new double[track.rows.size()]);
      rowsBy.add(new double[track.rows.size()][integrator.columns().length]);
      signals.add(track.rows.signal);
    }
    zeroSignals = zeros.stream().mapToDouble(ZeroReading::signal).toArray();
    priorTargets = new double[unknowns.size()];
  }

  /** The same problem with the weights of another, its own signals to be drawn. */
  public RunProblem withWeightsOf(RunProblem other) {
    whitenings.clear();
    whitenings.addAll(other.whitenings);
    return this;
  }

  /**
   * Puts drawn values in the place of what was recorded and believed.
   *
   * @param drawn signals of every track
   * @param zeroDraws signals of the zero runs
   * @param targets centres of the priors in the fit's own variables
   */
  public void replace(List<double[]> drawn, double[] zeroDraws, double[] targets) {
    signals.clear();
    signals.addAll(drawn);
    System.arraycopy(zeroDraws, 0, zeroSignals, 0, zeroSignals.length);
    System.arraycopy(targets, 0, priorTargets, 0, priorTargets.length);
  }

  /** Settles the weights: whitens every track by the course the balls take at this point. */
  public void whiten(double[] x, Wander wander) {
    integrate(x);
    whitenings.clear();
    for (int k = 0; k < tracks.size(); k++) {
      whitenings.add(Whitening.of(tracks.get(k).rows, integrators.get(k).course(), wander));
    }
  }

  /** The course of a track from the last {@link #integrate}. */
  public Whitening.Course course(int track) {
    return integrators.get(track).course();
  }

  /** Recorded less predicted signals of a track from the last {@link #integrate}. */
  public double[] residuals(int track) {
    double[] residuals = signals.get(track).clone();
    for (int i = 0; i < residuals.length; i++) {
      residuals[i] -= predicted.get(track)[i];
    }
    return residuals;
  }

  public Whitening whitening(int track) {
    return whitenings.get(track);
  }

  Unknowns unknowns() {
    return unknowns;
  }

  public List<Track> tracks() {
    return tracks;
  }

  public List<ZeroReading> zeros() {
    return zeros;
  }

  /** Runs through all tracks at this point; does nothing where they were run through there last. */
  public void integrate(double[] x) {
    double[] values = unknowns.values(x);
    if (Arrays.equals(values, integrated)) {
      return;
    }
    integrated = values;
    for (int k = 0; k < tracks.size(); k++) {
      integrators.get(k).run(values, predicted.get(k), rowsBy.get(k));
    }
  }

  /** Predicted signals of a track from the last {@link #integrate}. */
  public double[] predicted(int track) {
    return predicted.get(track);
  }

  /** The small equivalent problem at this point. */
  public Linearised linearise(double[] x) {
    integrate(x);
    int p = x.length;
    double[][] normal = new double[p][p];
    double[] right = new double[p];
    double[] slopes = unknowns.slopes(x);
    double cost = 0;
    for (int k = 0; k < tracks.size(); k++) {
      cost += add(k, slopes, normal, right);
    }
    int offset = layout.path(ThermalPath.OFFSET);
    for (int z = 0; z < zeros.size(); z++) {
      double u = zeros.get(z).u();
      double residual = (unknowns.get(offset).value(x[offset]) - zeroSignals[z]) / u;
      double by = slopes[offset] / u;
      normal[offset][offset] += by * by;
      right[offset] += by * residual;
      cost += residual * residual;
    }
    for (int i = 0; i < p; i++) {
      normal[i][i] += 1;
      double away = x[i] - priorTargets[i];
      right[i] += away;
      cost += away * away;
    }
    unknowns.addTies(x, priorTargets, normal, right);
    cost += tied(x);
    return compress(normal, right, cost);
  }

  /** What is known of unknowns in pairs, as it counts in the sum of squares. */
  public double tied(double[] x) {
    return unknowns.tied(x, priorTargets);
  }

  private double add(int k, double[] slopes, double[][] normal, double[] right) {
    Track.Rows rows = tracks.get(k).rows;
    int[] columns = integrators.get(k).columns();
    double[] own = Arrays.stream(columns).mapToDouble(column -> slopes[column]).toArray();
    double[] expected = new double[columns.length];
    double[] draughts = new double[columns.length];
    double draught = 0;
    RowSums sums = new RowSums(columns.length);
    Whitening whitening = whitenings.get(k);
    double expectedResidual = 0;
    // the columns of turns that have not begun are still 0
    int begun = 0;
    for (int i = 0; i < rows.size(); i++) {
      double keep = whitening.keep(i);
      double gain = whitening.gain(i);
      double scale = whitening.scale(i);
      double[] by = rowsBy.get(k)[i];
      double stays = whitening.stays(i);
      double pushes = whitening.pushes(i);
      double learns = whitening.learns(i);
      double ahead = keep * expectedResidual + pushes * draught;
      double surprise = predicted.get(k)[i] - signals.get(k)[i] - ahead;
      expectedResidual = ahead + gain * surprise;
      draught = stays * draught + learns * surprise;
      begun = begun(by, begun);
      double[] row = sums.next();
      for (int a = 0; a < begun; a++) {
        double before = keep * expected[a] + pushes * draughts[a];
        double fresh = by[a] * own[a] - before;
        expected[a] = before + gain * fresh;
        draughts[a] = stays * draughts[a] + learns * fresh;
        row[a] = fresh * scale;
      }
      if (scale != 0) {
        sums.add(begun, surprise * scale);
      }
    }
    return sums.into(columns, normal, right);
  }

  /** How many leading columns hold all that is not 0, at least as many as before. */
  private static int begun(double[] by, int before) {
    int columns = by.length;
    while (columns > before && by[columns - 1] == 0) {
      columns--;
    }
    return columns;
  }

  /** A step so far off that nothing can be computed there: a cost that no search keeps. */
  private static Linearised wild(int p) {
    double[] residuals = new double[p + 1];
    residuals[p] = WILD;
    double[][] jacobian = new double[p + 1][p];
    for (int i = 0; i < p; i++) {
      jacobian[i][i] = 1;
    }
    return Linearised.triangular(residuals, jacobian);
  }

  /** Cholesky factor R with RᵀR = normal, residuals y = R⁻ᵀ right, and what is left of the cost. */
  private static Linearised compress(double[][] normal, double[] right, double cost) {
    int p = right.length;
    double[][] jacobian = new double[p + 1][p];
    double[] residuals = new double[p + 1];
    for (int i = 0; i < p; i++) {
      normal[i][i] *= 1 + ROUNDING;
    }
    RealMatrix factor;
    try {
      factor = new CholeskyDecomposition(new Array2DRowRealMatrix(normal, false)).getLT();
    } catch (MathIllegalArgumentException wildStep) {
      return wild(p);
    }
    for (int i = 0; i < p; i++) {
      jacobian[i] = factor.getRow(i);
    }
    RealVector solved = new ArrayRealVector(right);
    MatrixUtils.solveLowerTriangularSystem(factor.transpose(), solved);
    for (int i = 0; i < p; i++) {
      residuals[i] = solved.getEntry(i);
    }
    residuals[p] = Math.sqrt(Math.max(cost - solved.dotProduct(solved), 0));
    return Linearised.triangular(residuals, jacobian);
  }
}
