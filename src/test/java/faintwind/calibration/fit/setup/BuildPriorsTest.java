package faintwind.calibration.fit.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.calibration.fit.numerics.Unknown;
import faintwind.calibration.response.AirPoint;
import faintwind.calibration.response.PhysicsShaped;
import faintwind.calibration.response.ThermalPath;
import faintwind.calibration.run.ArmKnown;
import faintwind.calibration.run.BuildFacts;
import faintwind.calibration.run.MadeRuns;
import faintwind.calibration.run.Run;
import faintwind.calibration.run.RunSet;
import faintwind.calibration.run.Series;
import faintwind.calibration.run.SignalChain;
import faintwind.calibration.run.Uncertain;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * By hand: a ball of 12.7 mm, 9 g of a metal with 400 J/(kg K), 4 % more for what fills it: 3.744
 * J/K; 5 V over 100 Ω, leads of 1 mW/K.
 */
class BuildPriorsTest {
  private static final Series SIGNAL = MadeRuns.series(0, 5, 900, t -> 20);
  private static final Run STILL = MadeRuns.still("still", SIGNAL);
  private static final Run SPIN = MadeRuns.spin("a", SIGNAL, MadeRuns.arm(300, 600, 60, 290));

  private static BuildFacts build(Optional<Uncertain> mass_kg) {
    return new BuildFacts(
        Optional.of(Uncertain.of(0.0127, 0.0)),
        mass_kg,
        Optional.of(Uncertain.of(400, 0.0)),
        Optional.of(Uncertain.of(100, 0.0)),
        Optional.of(Uncertain.of(5)),
        Optional.empty(),
        new BuildFacts.Wires(Optional.of(Uncertain.of(1e-3, 0.0)), Optional.empty()));
  }

  private static Setup setup(BuildFacts build) {
    RunSet set = new RunSet(List.of(STILL, SPIN), SignalChain.AS_IS, Optional.of(build));
    Setting setting = Setting.of(set);
    return new Setup(setting, setting.model(PhysicsShaped.ID));
  }

  private static Unknown named(Setup setup, String name) {
    for (int i = 0; i < setup.unknowns().size(); i++) {
      if (setup.unknowns().get(i).name().equals(name)) {
        return setup.unknowns().get(i);
      }
    }
    throw new AssertionError(name);
  }

  @Test
  void theRecordSharpensWhatIsExpected() {
    Setup setup = setup(build(Optional.of(Uncertain.of(0.009, 0.0))));
    AirPoint air = AirPoint.of(Setting.of(MadeRuns.set(STILL)).referenceAir());
    double k = air.conductivity(air.air_K());
    assertThat(k).isCloseTo(0.0257, within(0.0006)); // from memory: air at 20 °C
    Unknown conduction = named(setup, "conduction");
    assertThat(conduction.mean()).isCloseTo(2 * Math.PI * 0.0127 * k / 3.744, within(1e-9));
    assertThat(conduction.spread()).isCloseTo(Math.hypot(0.02, 0.03), within(1e-9));
    Unknown heating = setup.unknowns().get(setup.layout().path(ThermalPath.HEATING));
    assertThat(heating.mean()).isCloseTo(0.25 / 3.744, within(1e-9));
    assertThat(heating.spread()).isCloseTo(Math.sqrt(0.04 * 0.04 + 2 * 0.03 * 0.03), within(1e-9));
    Unknown leads = named(setup, "leads");
    assertThat(leads.mean()).isCloseTo(1e-3 / 3.744, within(1e-9));
    assertThat(leads.spread()).isCloseTo(0.03, within(1e-9));
  }

  @Test
  void withoutItsMassTheRecordSaysNothing() {
    Setup setup = setup(build(Optional.empty()));
    Setup none = new Setup(Setting.of(MadeRuns.set(STILL, SPIN)), setup.layout().model());
    for (String name : List.of("conduction", "heating", "leads")) {
      assertThat(named(setup, name)).isEqualTo(named(none, name));
    }
  }

  /** A rise of 30 ± 6 s is known to a fifth; a decay known worse than usual stays as wide. */
  @Test
  void aKnownArmSharpensItsTimes() {
    ArmKnown arm =
        new ArmKnown(
            Uncertain.of(0.04, 0.01),
            Uncertain.of(30, 6),
            Uncertain.of(20, 40),
            Uncertain.of(3, 0.3),
            Optional.of(Uncertain.of(0.002, 0.001)));
    List<Unknown> carried = ArmPriors.carried(arm.carriedShare(), Optional.of(arm));
    assertThat(carried.get(0).mean()).isEqualTo(0.04);
    assertThat(carried.get(0).spread()).isEqualTo(0.01);
    assertThat(carried.get(1)).isEqualTo(Unknown.log("carried_rise", 30, 0.2));
    assertThat(carried.get(2).mean()).isEqualTo(20);
    assertThat(carried.get(2).spread()).isLessThan(1);
    List<Unknown> rest = ArmPriors.arm(0.5, Optional.of(arm));
    assertThat(rest.get(0).mean()).isEqualTo(3);
    assertThat(rest.get(0).spread()).isCloseTo(0.1, within(1e-12));
    assertThat(rest.get(1)).isEqualTo(Unknown.linear("counted_from_rest", 0.5, 0.5));
    assertThat(rest.get(2)).isEqualTo(Unknown.linear("asymmetry", 0.002, 0.001));
    assertThat(ArmPriors.arm(1, Optional.empty()).get(1).spread()).isEqualTo(0.02);
    assertThat(ArmPriors.arm(1, Optional.empty()).get(2).mean()).isZero();
  }
}
