package faintwind.physics.design;

/**
 * What moves delta while nobody means it to. A room with more draught is also one whose air and
 * supply drift more; a quiet one steadies neither, it has less draught only. The numbers are common
 * practice, no source.
 *
 * @param draught_m_s air that moves in a room with doors and windows shut, m/s
 * @param supplyShare drift of the supply since the calibration, as a share of its voltage
 * @param between_K difference of the air between two balls a hand apart, K
 * @param warming_K_h how fast the air warms or cools, K an hour
 */
record Room(double draught_m_s, double supplyShare, double between_K, double warming_K_h) {
  private static final Room QUIET = new Room(0.010, 0.002, 0.1, 1);
  private static final Room ORDINARY = new Room(0.015, 0.002, 0.1, 1);
  private static final Room RESTLESS = new Room(0.020, 0.005, 0.2, 2);

  static Room at(Corner corner) {
    if (!corner.parts().contains(Corner.Part.ROOM)) {
      return ORDINARY;
    }
    return corner.edge() == Corner.Edge.LOW ? QUIET : RESTLESS;
  }
}
