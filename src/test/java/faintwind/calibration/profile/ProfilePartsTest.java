package faintwind.calibration.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;

import faintwind.calibration.run.SignalUnit;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProfilePartsTest {
  /** Definitions: 32 °F and 212 °F, a standard atmosphere of 760 mmHg. */
  @ParameterizedTest(name = "{1} {0} are {2}")
  @CsvSource({
    "FAHRENHEIT, 32, 273.15",
    "FAHRENHEIT, 212, 373.15",
    "CELSIUS, 20, 293.15",
    "MMHG, 760, 101325",
    "KILOPASCAL, 100, 100000",
    "PERCENT, 45, 0.45",
    "MICROVOLT, 5, 5e-6"
  })
  void unitsInSi(ValueUnit unit, double value, double si) {
    assertThat(unit.toSi(value)).isCloseTo(si, withinPercentage(1e-4));
  }

  @Test
  void unitsAndWords() {
    assertThat(ValueUnit.MMHG.word()).isEqualTo("mmHg");
    assertThat(ValueUnit.MILLIVOLT.word()).isEqualTo("mV");
    for (SignalUnit unit : SignalUnit.values()) {
      assertThat(ValueUnit.of(unit).signal()).contains(unit);
    }
    assertThat(ValueUnit.CELSIUS.signal()).isEmpty();
    assertThat(Meaning.PRESSURE.word()).isEqualTo("pressure");
    assertThat(LineForm.word('\t')).isEqualTo("tab");
    assertThat(LineForm.word(' ')).isEqualTo("space");
    assertThat(LineForm.word(';')).isEqualTo(";");
  }

  @Test
  void whatNoRoomHasIsNotPossible() {
    assertThat(Meaning.AIR.isPossible(200)).isTrue();
    assertThat(Meaning.AIR.isPossible(400)).isTrue();
    assertThat(Meaning.AIR.isPossible(199.9)).isFalse();
    assertThat(Meaning.AIR.isPossible(400.1)).isFalse();
    assertThat(Meaning.HEATED.isPossible(456.15)).isTrue();
    assertThat(Meaning.HEATED.isPossible(456.2)).isFalse();
    assertThat(Meaning.PRESSURE.isPossible(30_000)).isTrue();
    assertThat(Meaning.PRESSURE.isPossible(120_000)).isTrue();
    assertThat(Meaning.PRESSURE.isPossible(29_999)).isFalse();
    assertThat(Meaning.HUMIDITY.isPossible(1)).isTrue();
    assertThat(Meaning.HUMIDITY.isPossible(0)).isTrue();
    assertThat(Meaning.HUMIDITY.isPossible(1.01)).isFalse();
    assertThat(Meaning.SIGNAL.isPossible(1e9)).isTrue();
    assertThat(Meaning.SUPPLY.isPossible(61)).isFalse();
  }

  @Test
  void timeFormsSayWhatTheyCarry() {
    assertThat(TimeForm.ISO.isDated()).isTrue();
    assertThat(TimeForm.PATTERN.isDated()).isTrue();
    assertThat(TimeForm.CLOCK.isDated()).isFalse();
    assertThat(TimeForm.MINUTES.isNumber()).isTrue();
    assertThat(TimeForm.MINUTES.unit_s()).isEqualTo(60);
    assertThat(TimeForm.ISO.isNumber()).isFalse();
  }

  @Test
  void formsThatCannotBeAreRefused() {
    assertThatThrownBy(() -> form('x', 1, OptionalInt.empty()))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> form('.', -1, OptionalInt.empty()))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> form('.', 2, OptionalInt.of(3)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> form('.', 2, OptionalInt.of(0)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(form('.', 0, OptionalInt.empty()).names()).isZero();
    assertThat(form(',', 3, OptionalInt.of(1)).names()).isEqualTo(1);
    assertThat(form(',', 3, OptionalInt.of(3)).names()).isEqualTo(3);
    assertThat(form(',', 3, OptionalInt.empty()).ofSheet().decimalMark()).isEqualTo('.');
    assertThat(form(',', 3, OptionalInt.empty()).isMissing("n/a")).isTrue();
    assertThat(form(',', 3, OptionalInt.empty()).isMissing("")).isTrue();
    assertThat(form(',', 3, OptionalInt.empty()).isMissing("0")).isFalse();
  }

  private static LineForm form(char mark, int header, OptionalInt names) {
    return new LineForm(';', mark, header, names, "#", List.of("n/a"));
  }

  @Test
  void aColumnIsANumberOrAName() {
    assertThatThrownBy(() -> new ColumnRef(0, "")).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new ColumnRef(1, "a")).isInstanceOf(IllegalArgumentException.class);
    assertThat(ColumnRef.numbered(3).index(List.of("a"))).hasValue(2);
    assertThat(ColumnRef.named("b").index(List.of("a", "b"))).hasValue(1);
    assertThat(ColumnRef.named("c").index(List.of("a", "b"))).isEmpty();
    assertThat(ColumnRef.numbered(3).text()).isEqualTo("3");
    assertThat(ColumnRef.named("b").text()).isEqualTo("b");
  }

  @Test
  void aValueColumnNeedsAScaleAndAUnitOfItsMeaning() {
    assertThatThrownBy(() -> column(0, OptionalDouble.empty()))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> column(1, OptionalDouble.of(0)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(column(2, OptionalDouble.of(1024)).scale()).isEqualTo(2);
    assertThatThrownBy(() -> ValueColumn.named("a", Meaning.AIR, ValueUnit.VOLT))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static ValueColumn column(double scale, OptionalDouble wrapsAt) {
    return new ValueColumn(
        ColumnRef.numbered(1),
        Meaning.SIGNAL,
        ValueUnit.COUNTS,
        scale,
        0,
        wrapsAt,
        ValueColumn.Around.NOTHING);
  }

  @Test
  void textAroundANumberIsTakenOff() {
    ValueColumn.Around around = new ValueColumn.Around("T=", "mV");
    assertThat(around.strip(" T= 3.5 mV ")).isEqualTo("3.5");
    assertThat(around.strip("3.5")).isEqualTo("3.5");
    assertThat(new ValueColumn.Around("", "mV").strip("T=3mV")).isEqualTo("T=3");
    assertThat(new ValueColumn.Around("T=", "").strip("T=3mV")).isEqualTo("3mV");
  }

  @Test
  void aNumberHasOneDecimalMark() {
    assertThat(LineNumber.parse("-1,5e3", ',')).hasValue(-1500);
    assertThat(LineNumber.parse("1.5", ',')).isEmpty();
    assertThat(LineNumber.parse(".5", '.')).hasValue(0.5);
    assertThat(LineNumber.parse("1e999", '.')).isEmpty();
    assertThat(LineNumber.other(',')).isEqualTo('.');
    assertThat(LineNumber.other('.')).isEqualTo(',');
  }

  /** A counter of 100: 90, 95, 2, 1 and back to 99 are steps of 5, 7, −1 and −2. */
  @Test
  void aCounterIsFollowedOverItsWrap() {
    Unwrap unwrap = new Unwrap(100);
    assertThat(unwrap.next(90)).isEqualTo(90);
    assertThat(unwrap.next(95)).isEqualTo(95);
    assertThat(unwrap.next(2)).isEqualTo(102);
    assertThat(unwrap.next(1)).isEqualTo(101);
    assertThat(unwrap.next(99)).isEqualTo(99);
  }

  /** Berlin, 25 October 2026: the clocks go from 3:00 back to 2:00; 29 March: 2:00 to 3:00. */
  @Test
  void anHourThatComesTwiceIsToldByTheOrder() {
    LocalMoment moment = new LocalMoment(ZoneId.of("Europe/Berlin"));
    LocalDateTime half = LocalDateTime.parse("2026-10-25T02:30:00");
    assertThat(moment.comesTwice(half)).isTrue();
    assertThat(moment.comesTwice(half.plusHours(2))).isFalse();
    assertThat(moment.of(half).orElseThrow().getOffset().getTotalSeconds()).isEqualTo(7200);
    assertThat(moment.of(half.plusMinutes(20)).orElseThrow().getOffset().getTotalSeconds())
        .isEqualTo(7200);
    assertThat(moment.of(half).orElseThrow().getOffset().getTotalSeconds()).isEqualTo(3600);
    assertThat(moment.of(LocalDateTime.parse("2026-03-29T02:30:00"))).isEmpty();
  }
}
