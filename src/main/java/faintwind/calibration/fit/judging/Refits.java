package faintwind.calibration.fit.judging;

import faintwind.calibration.fit.numerics.GaussNewton;
import faintwind.calibration.fit.numerics.RunProblem;
import faintwind.calibration.fit.numerics.Unknown;
import faintwind.calibration.fit.solving.FitResult;
import faintwind.calibration.fit.solving.FormAllowance;
import faintwind.calibration.fit.squares.Optimiser;
import faintwind.calibration.fit.wander.Whitening;
import faintwind.calibration.response.ThermalPath;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.apache.commons.math3.exception.MathIllegalStateException;

/**
 * Refits of one fit to drawn inputs (JCGM 101:2008, 5.9 and 7): radius, clicks, unsteady turning,
 * carried air, delays and every other prior drawn from its distribution; the recordings drawn as
 * prediction plus residuals resampled in blocks. The residuals are resampled whitened and coloured
 * again, so that they keep their slow wandering. Drawing the priors' centres as well makes the
 * refits spread as the posterior does (randomise, then optimise: Bardsley et al. 2014, from
 * memory).
 *
 * <p>One object for one thread; the fit itself is only read.
 */
public final class Refits {
  private static final Optimiser QUICK = new Optimiser(40, 1e-4);

  private static final int BLOCK = 12;

  private final FitResult fit;
  private final RunProblem problem;

  /** The problem at the fitted point, where every refit begins. */
  private final RunProblem atFit;

  private final double[] beyond;
  private final List<double[]> predicted = new ArrayList<>();
  private final List<double[]> white = new ArrayList<>();

  /** Refits of this fit. */
  public Refits(FitResult fit) {
    this.fit = fit;
    this.problem = fit.setup().problem().withWeightsOf(fit.problem());
    this.atFit = fit.setup().problem().withWeightsOf(fit.problem());
    this.beyond = fit.solution().optimum().beyondCurvature();
    atFit.integrate(fit.solution().optimum().point());
    for (int k = 0; k < atFit.tracks().size(); k++) {
      predicted.add(atFit.predicted(k));
      white.add(centred(atFit.whitening(k).apply(atFit.residuals(k)), atFit.whitening(k)));
    }
  }

  private static double[] centred(double[] white, Whitening whitening) {
    double sum = 0;
    int count = 0;
    for (int i = 0; i < white.length; i++) {
      if (whitening.counts(i)) {
        sum += white[i];
        count++;
      }
    }
    double[] centred = new double[white.length];
    for (int i = 0; i < white.length; i++) {
      centred[i] = whitening.counts(i) ? white[i] - sum / Math.max(1, count) : 0;
    }
    return centred;
  }

  /**
   * One refit.
   *
   * @param seed of its random numbers; the same seed gives the same refit
   * @param cancelled asked at every step
   * @return values of the formula's parameters, or nothing where the refit found no minimum
   */
  public Optional<double[]> draw(long seed, BooleanSupplier cancelled) {
    return draw(
        seed,
        point ->
            GaussNewton.from(atFit.linearise(point), problem, point, cancelled)
                .or(() -> searched(QUICK, point, cancelled)));
  }

  /** The same by another way from the fitted point to the least. */
  Optional<double[]> draw(long seed, Function<double[], Optional<double[]>> least) {
    SplittableRandom random = new SplittableRandom(seed);
    List<double[]> drawn = new ArrayList<>();
    for (int k = 0; k < predicted.size(); k++) {
      double[] residuals = problem.whitening(k).colour(resampled(white.get(k), random));
      double[] signal = predicted.get(k).clone();
      for (int i = 0; i < signal.length; i++) {
        signal[i] += residuals[i];
      }
      drawn.add(signal);
    }
    double offset = fit.values()[fit.setup().layout().path(ThermalPath.OFFSET)];
    double[] zeros =
        problem.zeros().stream().mapToDouble(z -> offset + z.u() * random.nextGaussian()).toArray();
    double[] point = fit.solution().optimum().point();
    double[] targets = fit.setup().unknowns().drawn(random);
    for (int i = 0; i < targets.length; i++) {
      targets[i] += point[i];
    }
    problem.replace(drawn, zeros, targets);
    atFit.replace(drawn, zeros, targets);
    return least.apply(point).map(x -> formula(withBeyond(x, random), random));
  }

  /** The least of the present draw by a search. */
  Optional<double[]> searched(Optimiser search, double[] point, BooleanSupplier cancelled) {
    try {
      return Optional.of(search.minimise(problem::linearise, point, cancelled).point());
    } catch (MathIllegalStateException noMinimum) {
      return Optional.empty();
    }
  }

  /** Adds what the carried air was given beyond the curvature at the fitted point. */
  private double[] withBeyond(double[] x, SplittableRandom random) {
    double step = random.nextGaussian();
    for (int i = 0; i < x.length; i++) {
      x[i] += step * beyond[i];
    }
    return x;
  }

  private double[] formula(double[] x, SplittableRandom random) {
    double[] values = fit.setup().unknowns().values(x);
    double[] formula = Arrays.copyOf(values, fit.setup().layout().formula());
    for (int i = 0; i < fit.setup().layout().losses(); i++) {
      double variance =
          FormAllowance.form(fit.setup(), values, i)
              + FormAllowance.carried(fit.setup(), values, i);
      double step = Math.sqrt(variance) * random.nextGaussian();
      boolean positive = fit.setup().unknowns().get(i).shape() == Unknown.Shape.LOG;
      formula[i] = positive ? values[i] * Math.exp(step / values[i]) : values[i] + step;
    }
    return formula;
  }

  private static double[] resampled(double[] white, SplittableRandom random) {
    double[] drawn = new double[white.length];
    for (int from = 0; from < drawn.length; from += BLOCK) {
      int source = random.nextInt(Math.max(1, white.length - BLOCK));
      for (int i = 0; i < BLOCK && from + i < drawn.length; i++) {
        drawn[from + i] = white[Math.min(source + i, white.length - 1)];
      }
    }
    return drawn;
  }
}
