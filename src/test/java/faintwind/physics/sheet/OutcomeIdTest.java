package faintwind.physics.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OutcomeIdTest {
  /** The first and one of the last of each group. */
  @ParameterizedTest(name = "{0} is of {1}")
  @CsvSource({
    "AIR_DENSITY, AIR",
    "AIR_PRANDTL, AIR",
    "BALL_DIAMETER, BALLS",
    "BORE_CLEARANCE, BALLS",
    "HEATER_RESISTANCE, HEATER",
    "BATTERY_TIME, HEATER",
    "STILL_DELTA, HEAT",
    "JAR_TIME, HEAT",
    "SENSITIVITY, SIGNAL",
    "INSULATION_STOP, SIGNAL",
    "PLATING_NICKEL_CURRENT, PLATING",
    "PLATING_HYDROGEN_ROOM, PLATING",
    "ARM_RADIUS, ARM",
    "ARM_CLEAR, ARM"
  })
  void anOutcomeBelongsToItsGroup(OutcomeId id, OutcomeId.Group group) {
    assertThat(id.group()).isEqualTo(group);
  }

  @Test
  void everyNameIsFoundAgainAndEndsInItsUnit() {
    List<String> ids = OutcomeId.ids();
    assertThat(ids).hasSameSizeAs(OutcomeId.values()).doesNotHaveDuplicates();
    assertThat(Arrays.stream(OutcomeId.values()))
        .allSatisfy(id -> assertThat(OutcomeId.of(id.id())).contains(id));
    assertThat(OutcomeId.of("ball_mass_lb")).isEmpty();
  }
}
