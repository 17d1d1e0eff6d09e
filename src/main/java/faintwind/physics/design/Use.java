package faintwind.physics.design;

/**
 * What the instrument is for.
 *
 * @param place where it stands
 * @param contact_s longest time that someone may touch the heated ball, s
 * @param slowest_m_s slowest speed wanted, m/s
 * @param fastest_m_s fastest speed wanted, m/s
 * @param altitude_m altitude above sea level, m, for the resistor's rating
 */
public record Use(
    Place place, double contact_s, double slowest_m_s, double fastest_m_s, double altitude_m) {

  /** Where it stands. */
  public enum Place {
    INDOORS,
    NARROW,
    SHADE,
    SUN,
    /** Indoors, among children. */
    CLASSROOM,
    /** Outdoors in the sun, where a child or an animal may reach it. */
    REACHABLE
  }

  /** The same for somebody who wants this of it. */
  public Use wanted(Place other, double otherContact_s, double slow_m_s, double fast_m_s) {
    return new Use(other, otherContact_s, slow_m_s, fast_m_s, altitude_m);
  }

  /** Whether the sun shines on it. */
  public boolean isSunny() {
    return place == Place.SUN || place == Place.REACHABLE;
  }

  /** Whether someone may touch it who does not know that it is hot. */
  public boolean isInReach() {
    return place == Place.CLASSROOM || place == Place.REACHABLE;
  }
}
