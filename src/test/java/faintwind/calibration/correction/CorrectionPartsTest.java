package faintwind.calibration.correction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.Calibration;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.Formula;
import faintwind.calibration.run.MadeRuns;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.Uncertain;
import faintwind.calibration.speed.TestCalibration;
import java.util.List;
import org.junit.jupiter.api.Test;

/** By hand: air of 0.05 ± 0.01 m/s beside an arm at 2 m/s is 2.5 ± 0.5 %. */
class CorrectionPartsTest {
  @Test
  void theShareIsThatOfTheArm() {
    Uncertain share = new CarriedShare.Reading(2, 0.05, 0.01).share();
    assertThat(share.value()).isCloseTo(0.025, within(1e-12));
    assertThat(share.u().orElseThrow()).isCloseTo(0.005, within(1e-12));
    assertThatThrownBy(() -> new CarriedShare.Reading(0, 0.05, 0.01))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new CarriedShare.Reading(2, -0.1, 0.01))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new CarriedShare.Reading(2, 0.05, 0))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void wordsAreThoseOfTheBundle() {
    assertThat(Correction.Source.AIR_STATE.word()).isEqualTo("air-state");
    assertThat(Correction.Basis.ASSUMED.word()).isEqualTo("assumed");
  }

  /** The signal of 0.3 m/s in the last three tenths of the turning, another before. */
  @Test
  void theInstrumentItselfReadsTheAirBesideTheArm() {
    Calibration calibration = TestCalibration.ofModel();
    Formula formula = Formula.of(calibration);
    AirPoint air = AirPoint.of(calibration.formula().referenceAir());
    double signal =
        formula.signal(
            formula.steadyDelta_K(0.3, calibration.signal().supply_V(), air), air.air_K());
    Run spin =
        MadeRuns.spin(
            "a",
            MadeRuns.series(0, 5, 900, t -> t < 505 || t > 600 ? 5 : signal),
            MadeRuns.arm(300, 600, 60, 290));
    Run still = MadeRuns.still("still", MadeRuns.series(0, 5, 900, t -> signal));
    List<BesideTheArm.Turned> turned = BesideTheArm.of(MadeRuns.set(still, spin), calibration);
    assertThat(turned).extracting(BesideTheArm.Turned::run).containsExactly("a");
    CarriedShare.Reading reading = turned.get(0).reading();
    assertThat(reading.air_m_s()).isBetween(0.299, 0.45);
    assertThat(reading.arm_m_s()).isCloseTo(2 * Math.PI * 0.4 * 60 / 290, within(1e-9));
    assertThat(turned.get(0).aboveFloor()).isTrue();
  }

  /** Still air is below the floor, and known to the floor at 95 %. */
  @Test
  void stillAirBesideTheArmIsBelowTheFloor() {
    Calibration calibration = TestCalibration.ofModel();
    double still = calibration.performance().stillSignal() + 0.1;
    Run spin =
        MadeRuns.spin("a", MadeRuns.series(0, 5, 900, t -> still), MadeRuns.arm(300, 600, 60, 290));
    BesideTheArm.Turned turned = BesideTheArm.of(MadeRuns.set(spin), calibration).get(0);
    assertThat(turned.aboveFloor()).isFalse();
    assertThat(turned.reading().u_air_m_s())
        .isCloseTo(calibration.performance().floor_m_s() / 1.96, within(1e-9));
  }

  private static Run still(String name, double last) {
    return MadeRuns.still(name, MadeRuns.series(0, 5, 1000, t -> t < 890 ? 7 : last));
  }

  private static Correction draught(Run... runs) {
    return Corrections.of(MadeRuns.set(runs), TestCalibration.ofModel()).stream()
        .filter(c -> c.source() == Correction.Source.DRAUGHT)
        .findFirst()
        .orElseThrow();
  }

  /** The last tenth counts: 20 K before, 19.6 K after are 2 % apart, half of which is 1 %. */
  @Test
  void aDraughtIsHalfOfWhatStillAirChangedBy() {
    assertThat(draught(still("a", 20), still("b", 30), still("c", 19.6)).u())
        .isCloseTo(0.01, within(1e-12));
    assertThat(draught(still("a", 20), still("c", 20.4)).u()).isCloseTo(0.01, within(1e-12));
    assertThat(draught(still("a", 20), still("c", 20.4)).basis()).isEqualTo(Correction.Basis.SHOWN);
    assertThat(draught(still("a", 20)).basis()).isEqualTo(Correction.Basis.ASSUMED);
  }
}
