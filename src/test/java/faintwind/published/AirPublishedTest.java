package faintwind.published;

import faintwind.physics.AirProperties;
import faintwind.physics.AirState;
import faintwind.physics.DryAir;
import faintwind.physics.MoistAir;
import faintwind.physics.StandardAtmosphere;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

class AirPublishedTest {

  @TestFactory
  Stream<DynamicTest> air() {
    return PublishedRow.tests("air.csv", AirPublishedTest::compute);
  }

  private static double compute(PublishedRow row) {
    return switch (row.what()) {
      case "viscosity" -> DryAir.viscosity_Pa_s(row.number("T"), row.number("n"));
      case "conductivity" -> DryAir.conductivity_W_mK(row.number("T"), row.number("n"));
      case "psv" -> MoistAir.saturationPressure_Pa(row.number("T"));
      case "p_std" -> StandardAtmosphere.pressure_Pa(row.number("z"));
      case "Z" -> MoistAir.compressibility(state(row));
      case "xv" -> MoistAir.vapourFraction(state(row));
      default -> property(row);
    };
  }

  private static double property(PublishedRow row) {
    AirProperties p = AirProperties.of(state(row));
    return switch (row.what()) {
      case "density" -> p.density_kg_m3();
      case "mu" -> p.viscosity_Pa_s();
      case "k" -> p.conductivity_W_mK();
      case "cp" -> p.specificHeat_J_kgK();
      case "nu" -> p.kinematicViscosity_m2_s();
      case "pr" -> p.prandtl();
      default -> throw new IllegalArgumentException(row.what());
    };
  }

  private static AirState state(PublishedRow row) {
    return new AirState(row.number("T"), row.number("p"), row.number("h"));
  }
}
