package faintwind.physics.design;

import faintwind.physics.Ranged;
import java.util.ArrayList;
import java.util.List;

/** The prediction against speed. */
public final class DesignCurve {
  private static final List<Double> SPEEDS_M_S =
      List.of(
          0.0, 0.02, 0.03, 0.04, 0.05, 0.07, 0.1, 0.15, 0.2, 0.3, 0.4, 0.5, 0.7, 1.0, 1.5, 2.0, 2.5,
          3.0, 4.0, 5.0);

  private DesignCurve() {}

  /** Points from still air to 5 m/s. */
  public static List<CurvePoint> of(Design design, Spread spread) {
    List<CurvePoint> points = new ArrayList<>();
    Detection detection = new Detection(design.sense(), spread.nominal());
    for (double u : SPEEDS_M_S) {
      Ranged delta = spread.nominal().ranged_K(u);
      points.add(
          new CurvePoint(
              u,
              spread.of(m -> m.delta_K(u)),
              spread.of(m -> m.timeConstant_s(u)),
              design.sense().gain() * spread.nominal().signal_V(delta.value()),
              detection.resolution_m_s(Math.max(0.01, u)),
              delta.isInside()));
    }
    return points;
  }
}
