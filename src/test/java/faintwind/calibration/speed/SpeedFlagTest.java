package faintwind.calibration.speed;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class SpeedFlagTest {

  @Test
  void flagsThatAreKeptAreTheSameSet() {
    SpeedFlag[] all = SpeedFlag.values();
    for (int bits = 0; bits < 1 << all.length; bits++) {
      EnumSet<SpeedFlag> given = EnumSet.noneOf(SpeedFlag.class);
      for (SpeedFlag flag : all) {
        if ((bits & flag.bit()) != 0) {
          given.add(flag);
        }
      }
      Set<SpeedFlag> kept = SpeedFlag.kept(given);
      assertThat(kept).isEqualTo(given).containsExactlyElementsOf(given);
      assertThat(given).isEqualTo(kept).hasSameHashCodeAs(kept);
      assertThat(SpeedFlag.of(bits)).isSameAs(kept);
      assertThat(SpeedFlag.text(kept))
          .isEqualTo(given.stream().map(SpeedFlag::word).collect(Collectors.joining("+")))
          .isEqualTo(SpeedFlag.text(given));
    }
  }
}
