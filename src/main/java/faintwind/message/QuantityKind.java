package faintwind.message;

/** What a typed number can be, with the unit that a bare prefix ({@code 420k}) stands before. */
enum QuantityKind {
  NUMBER("", "5", true),
  SHARE("%", "5 or 5 %", true),
  LENGTH("m", "12.7 mm or 1/2 in", false),
  VOLUME("m³", "30", false),
  CURRENT_DENSITY("A/m²", "1 A/dm²", false),
  AREA("m²", "5.07 cm²", false),
  MASS("g", "9.58 g", false),
  TIME("s", "90 s or 1.5 min", false),
  RESISTANCE("Ω", "402, 0.4k or OL", false),
  VOLTAGE("V", "5 or 350 mV", true),
  CURRENT("A", "50 mA", true),
  POWER("W", "0.25 or 250 mW", false),
  CHARGE("Ah", "550 mAh", false),
  TEMPERATURE("°C", "21.5", true),
  DIFFERENCE("K", "12.5", true),
  PRESSURE("Pa", "1013 hPa", false),
  SPEED("m/s", "0.5 or 50 cm/s", false),
  ROTATION("rpm", "2500", false),
  FREQUENCY("Hz", "50", false);

  private final String baseSymbol;
  private final String example;
  private final boolean negative;

  QuantityKind(String baseSymbol, String example, boolean negative) {
    this.baseSymbol = baseSymbol;
    this.example = example;
    this.negative = negative;
  }

  String baseSymbol() {
    return baseSymbol;
  }

  /** How a number of this kind may be typed. */
  String example() {
    return example;
  }

  boolean mayBeNegative() {
    return negative;
  }

  /** Whether a prefix may stand without its unit, as meters and resistors have it. */
  boolean takesBarePrefix() {
    return switch (this) {
      case NUMBER, RESISTANCE, VOLTAGE, CURRENT, POWER, FREQUENCY -> true;
      case SHARE,
          LENGTH,
          AREA,
          VOLUME,
          CURRENT_DENSITY,
          MASS,
          TIME,
          CHARGE,
          TEMPERATURE,
          DIFFERENCE,
          PRESSURE,
          SPEED,
          ROTATION ->
          false;
    };
  }
}
