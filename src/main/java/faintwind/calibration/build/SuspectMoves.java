package faintwind.calibration.build;

import faintwind.calibration.BuildSuspect;
import java.util.Map;

/**
 * How far a suspect may be off and what it moves. Own choice, no source: a value misread by a step
 * of its series, a ball of the next size, another metal, another type of wire.
 *
 * @param spread standard deviation of the logarithm of the suspect's own number
 * @param parts change of the logarithm of each part with it; empty where anything may change
 */
record SuspectMoves(double spread, Map<BuildPart, Double> parts) {
  static SuspectMoves of(BuildSuspect suspect) {
    return switch (suspect) {
      case SUPPLY -> new SuspectMoves(0.1, Map.of(BuildPart.SUPPLY, 1.0));
      case RESISTOR -> new SuspectMoves(0.15, Map.of(BuildPart.RESISTOR, 1.0));
      case BALL_SIZE ->
          new SuspectMoves(0.15, Map.of(BuildPart.DIAMETER, 1.0, BuildPart.MASS, 3.0));
      case METAL -> new SuspectMoves(0.3, Map.of(BuildPart.SPECIFIC_HEAT, 1.0));
      case GLUE -> new SuspectMoves(1.5, Map.of(BuildPart.GLUE, 1.0));
      case LEADS -> new SuspectMoves(1, Map.of(BuildPart.LEADS, 1.0));
      case THERMOCOUPLE -> new SuspectMoves(0.2, Map.of(BuildPart.SCALE, 1.0));
      case OTHER_RUNS -> new SuspectMoves(0.4, Map.of());
    };
  }
}
