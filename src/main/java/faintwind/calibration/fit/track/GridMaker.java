package faintwind.calibration.fit.track;

import faintwind.calibration.response.AirPoint;
import java.util.NavigableMap;
import java.util.TreeMap;

/** Chooses the times of integration of a track. */
public final class GridMaker {
  private static final double COARSEST_S = 8;
  private static final double NEAR_S = 9;

  private GridMaker() {}

  public static Track.Grid of(FileRows file, Track.Rows rows, AirAlong air, SupplyAlong supply) {
    NavigableMap<Double, Integer> times = new TreeMap<>();
    double first = file.signal().first_s();
    times.put(first, -1);
    for (double change : RowAverages.changes(file)) {
      for (double t = change - NEAR_S; t <= change + NEAR_S; t += 1) {
        if (t > first && t < file.signal().last_s()) {
          times.put(t, -1);
        }
      }
    }
    for (int i = 0; i < rows.size(); i++) {
      times.put(rows.time_s[i], i);
    }
    fill(times);
    return grid(times, air, supply);
  }

  private static void fill(NavigableMap<Double, Integer> times) {
    for (Double from : times.keySet().toArray(new Double[0])) {
      Double to = times.higherKey(from);
      if (to != null && to - from > COARSEST_S) {
        int parts = (int) Math.ceil((to - from) / COARSEST_S);
        for (int i = 1; i < parts; i++) {
          times.put(from + i * (to - from) / parts, -1);
        }
      }
    }
  }

  private static Track.Grid grid(
      NavigableMap<Double, Integer> times, AirAlong air, SupplyAlong supply) {
    int n = times.size();
    double[] time = new double[n];
    int[] row = new int[n];
    AirPoint[] points = new AirPoint[n];
    double[] air_K = new double[n];
    double[] power = new double[n];
    int k = 0;
    for (var entry : times.entrySet()) {
      time[k] = entry.getKey();
      row[k] = entry.getValue();
      points[k] = air.at(time[k]);
      k++;
    }
    air_K[n - 1] = points[n - 1].air_K();
    for (int i = 0; i < n - 1; i++) {
      power[i] = supply.meanSquare(time[i], time[i + 1]);
      air_K[i] = air.mean_K(time[i], time[i + 1]);
    }
    return new Track.Grid(time, row, points, air_K, power);
  }
}
