package faintwind.physics;

/** Constants of nature and conventions (CODATA 2018, exact since 2019 except σ's rounding). */
public final class Constants {
  /** 0 °C in kelvin (definition). */
  public static final double ZERO_C_K = 273.15;

  /** Stefan–Boltzmann constant, W/(m² K⁴). */
  public static final double STEFAN_BOLTZMANN_W_M2K4 = 5.670374419e-8;

  /** Faraday constant, C/mol. */
  public static final double FARADAY_C_MOL = 96_485.33212;

  /** Molar gas constant, J/(mol K). */
  public static final double GAS_J_MOLK = 8.314462618;

  /** Standard acceleration of free fall, m/s² (3rd CGPM, 1901). */
  public static final double GRAVITY_M_S2 = 9.80665;

  /** Standard atmosphere, Pa. */
  public static final double ATMOSPHERE_PA = 101_325.0;

  private Constants() {}
}
