package faintwind.calibration.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** By hand: what of a run counts, and what a row can hold at all. */
class RunPartsTest {
  private static final Series SIGNAL = MadeRuns.series(0, 10, 100, t -> t);

  private static Run without(Run run, NotCounted what) {
    RunConditions none = RunConditions.NONE;
    RunConditions conditions =
        new RunConditions(
            none.air_K(),
            none.pressure_Pa(),
            none.relativeHumidity(),
            none.direction(),
            none.thermocouple(),
            none.note(),
            what);
    return new Run(
        run.name(),
        run.kind(),
        run.file(),
        run.recording(),
        conditions,
        run.arm(),
        run.reference_m_s());
  }

  private static NotCounted from(double from_s, double to_s) {
    return NotCounted.NOTHING.with(new NotCounted.Stretch(from_s, to_s));
  }

  @Test
  void aStretchTakesItsEndsAlong() {
    assertThat(from(20, 40).of(SIGNAL).orElseThrow().times_s())
        .containsExactly(0, 10, 50, 60, 70, 80, 90, 100);
    assertThat(from(-5, 200).of(SIGNAL)).isEmpty();
    assertThat(NotCounted.NOTHING.of(SIGNAL).orElseThrow().size()).isEqualTo(11);
  }

  @Test
  void allIsAStretchWithoutEnds() {
    assertThat(NotCounted.ALL.isAll()).isTrue();
    assertThat(from(0, 100).isAll()).isFalse();
    assertThat(NotCounted.NOTHING.isNothing()).isTrue();
    assertThat(from(0, 1).isNothing()).isFalse();
  }

  @Test
  void theReasonStandsInTheNote() {
    String noted = from(0, 1).noted("door; left out: old", "a; b");
    assertThat(noted).isEqualTo("door; left out: a, b");
    assertThat(NotCounted.reasonIn(noted)).isEqualTo("a, b");
    assertThat(NotCounted.NOTHING.noted(noted, "x")).isEqualTo("door");
    assertThat(NotCounted.reasonIn("door")).isEmpty();
  }

  @Test
  void countedRunsAreThoseThatAFitTakes() {
    Run still = MadeRuns.still("still", SIGNAL);
    Run zero = MadeRuns.zero("zero", SIGNAL);
    RunSet set =
        MadeRuns.set(
            without(still, from(0, 40)),
            without(MadeRuns.still("away", SIGNAL), NotCounted.ALL),
            without(zero, NotCounted.ALL),
            MadeRuns.zero("other", SIGNAL));
    assertThat(set.counted().runs())
        .extracting(Run::name)
        .containsExactly("still", "away", "other");
    assertThat(set.counted().runs().get(0).recording().signal().size()).isEqualTo(6);
    assertThat(set.counted().runs().get(1).recording().signal().size()).isEqualTo(11);
    assertThat(set.sound().runs()).extracting(Run::name).containsExactly("still", "other");
    RunSet away = MadeRuns.set(without(still, NotCounted.ALL));
    assertThat(away.sound()).isSameAs(away);
    assertThatThrownBy(() -> set.with(List.of())).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void onlyASpinHasAnArm() {
    assertThatThrownBy(
            () ->
                MadeRuns.run(
                    "a", RunKind.SPIN, Recording.of(SignalUnit.DELTA_K, SIGNAL), Optional.empty()))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(
            () ->
                MadeRuns.run(
                    "a",
                    RunKind.REFERENCE,
                    Recording.of(SignalUnit.DELTA_K, SIGNAL),
                    Optional.empty()))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void nothingIsKnownOfTheArmUntilSomebodySaysSo() {
    assertThat(KnownBefore.NOTHING.tellsNothingOfTheArm()).isTrue();
    ClassKnown others =
        new ClassKnown(Map.of("carried_share", Uncertain.of(0.03, 0.01)), List.of());
    assertThat(KnownBefore.NOTHING.among(others).tellsNothingOfTheArm()).isFalse();
    ArmKnown arm =
        new ArmKnown(
            Uncertain.of(1), Uncertain.of(1), Uncertain.of(1), Uncertain.of(1), Optional.empty());
    assertThat(new KnownBefore(Optional.empty(), Optional.of(arm)).tellsNothingOfTheArm())
        .isFalse();
  }

  private static SignalChain chain(
      SignalChain.Input input,
      Optional<String> letter,
      OptionalDouble gain,
      OptionalDouble range,
      OptionalInt bits) {
    return new SignalChain(
        input,
        letter,
        gain,
        OptionalDouble.of(-0.5),
        1,
        new SignalChain.Resolution(range, bits, OptionalDouble.empty()));
  }

  /** 256 K at 100 µV/K and a gain of 100 are 2.56 V, half a volt of offset beside them. */
  @Test
  void aSignalIsNoMoreThanTheChainHandsOn() {
    OptionalDouble none = OptionalDouble.empty();
    SignalChain volts =
        chain(
            SignalChain.Input.VOLTAGE,
            Optional.of("K"),
            OptionalDouble.of(100),
            none,
            OptionalInt.empty());
    assertThat(Possible.of(SignalUnit.SIGNAL_V, volts).mostSignal()).isCloseTo(3.06, within(1e-9));
    assertThat(Possible.of(SignalUnit.SIGNAL_MV, volts).mostSignal())
        .isCloseTo(2560.5, within(1e-6));
    SignalChain ranged =
        chain(
            SignalChain.Input.VOLTAGE,
            Optional.of("K"),
            OptionalDouble.of(100),
            OptionalDouble.of(2),
            OptionalInt.empty());
    assertThat(Possible.of(SignalUnit.SIGNAL_V, ranged).mostSignal()).isEqualTo(2);
    SignalChain counted =
        chain(SignalChain.Input.VOLTAGE, Optional.empty(), none, none, OptionalInt.of(12));
    assertThat(Possible.of(SignalUnit.SIGNAL_COUNTS, counted).mostSignal()).isEqualTo(4096);
    assertThat(Possible.of(SignalUnit.SIGNAL_V, counted).mostSignal()).isInfinite();
    assertThat(Possible.of(SignalUnit.DELTA_K).mostSignal()).isEqualTo(256);
    SignalChain compensated =
        chain(SignalChain.Input.COMPENSATED_C, Optional.of("K"), none, none, OptionalInt.empty());
    assertThat(Possible.of(SignalUnit.SIGNAL_V, compensated).mostSignal()).isInfinite();
  }

  @Test
  void aCalibratedSignalIsNoMoreThanTheBallsGive() {
    SignalPath path =
        new SignalPath(
            SignalUnit.SIGNAL_MV,
            chain(
                SignalChain.Input.VOLTAGE,
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalInt.empty()),
            Optional.empty(),
            -4,
            OptionalDouble.empty());
    assertThat(Possible.of(path).mostSignal()).isCloseTo(0.5 + 256 * 4, within(1e-9));
    assertThat(Possible.of(SignalUnit.DELTA_K).byDesign(SignalUnit.DELTA_K, 30).mostSignal())
        .isEqualTo(90);
    assertThat(Possible.of(SignalUnit.SIGNAL_V).byDesign(SignalUnit.SIGNAL_V, 30).mostSignal())
        .isInfinite();
  }

  @Test
  void theLimitsThemselvesAreAllowed() {
    Possible possible = Possible.of(SignalUnit.DELTA_K);
    assertThat(possible.allowsSignal(256)).isTrue();
    assertThat(possible.allowsSignal(-257)).isFalse();
    assertThat(possible.allowsSupply(60)).isTrue();
    assertThat(possible.allowsSupply(60.1)).isFalse();
    assertThat(possible.allowsSupply(-1)).isTrue();
    assertThat(possible.allowsSupply(-1.1)).isFalse();
    Recording wild =
        Recording.of(SignalUnit.DELTA_K, MadeRuns.series(0, 10, 100, t -> t == 50 ? 300 : t));
    assertThat(wild.within(possible).signal().size()).isEqualTo(10);
    Recording sound = Recording.of(SignalUnit.DELTA_K, SIGNAL);
    assertThat(sound.within(possible)).isSameAs(sound);
  }

  /** 2π · 0.4 · 60/300; u² of 0.002/0.4 and 0.5/300. */
  @Test
  void anArmsSpeedAndItsUncertainty() {
    ArmTurning arm = MadeRuns.arm(0, 310, 60, 300);
    double speed = 2 * Math.PI * 0.4 * 60 / 300;
    assertThat(arm.speed_m_s()).isCloseTo(speed, within(1e-12));
    assertThat(ArmSpeed.of(arm).value()).isCloseTo(speed, within(1e-12));
    assertThat(ArmSpeed.of(arm).u().orElseThrow())
        .isCloseTo(speed * Math.hypot(0.005, 0.5 / 300), within(1e-12));
  }
}
