package faintwind.calibration.fit.track;

import faintwind.physics.AirState;
import java.util.List;

/**
 * What of a run file does not hang on the model that is fitted to it.
 *
 * @param rows its averaged rows, no weight of them settled
 * @param grid times of integration, with air and supply
 * @param supply its supply
 */
public record PreparedFile(Track.Rows rows, Track.Grid grid, SupplyAlong supply) {

  /**
   * Leaves spikes out, averages the rows and chooses the times.
   *
   * @param noise standard deviation of a single row
   * @param referenceAir the air where neither rows nor table say
   * @param nominal_V the supply that counts as 1
   */
  public static PreparedFile of(
      FileRows file, double noise, AirState referenceAir, double nominal_V) {
    List<Integer> spikes = Spikes.in(file.signal(), noise);
    Track.Rows rows = RowAverages.of(file, spikes);
    for (int i = 0; i < rows.size(); i++) {
      rows.sd[i] = noise / Math.sqrt(rows.count[i]);
    }
    AirAlong air = AirAlong.of(file, referenceAir);
    SupplyAlong supply = new SupplyAlong(file.channel(r -> r.recording().supply_V()), nominal_V);
    return new PreparedFile(rows, GridMaker.of(file, rows, air, supply), supply);
  }
}
