package faintwind.calibration.live;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.run.SignalUnit;
import faintwind.message.Checked;
import faintwind.message.Problem;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class SourceTextTest {
  static Stream<Arguments> spellings() {
    return Stream.of(
        Arguments.of(
            "serial:/dev/ttyUSB0",
            new SourceAddress.Serial("/dev/ttyUSB0", 9600, 8, SourceAddress.Parity.NONE, 1)),
        Arguments.of(
            "serial:COM3?baud=50&bits=5&parity=odd&stop=2",
            new SourceAddress.Serial("COM3", 50, 5, SourceAddress.Parity.ODD, 2)),
        Arguments.of(
            "serial:COM3?baud=4000000&bits=8",
            new SourceAddress.Serial("COM3", 4_000_000, 8, SourceAddress.Parity.NONE, 1)),
        Arguments.of("tcp:192.0.2.7:5000", new SourceAddress.Tcp("192.0.2.7", 5000)),
        Arguments.of("tcp:logger:65535", new SourceAddress.Tcp("logger", 65_535)),
        Arguments.of("udp::1", new SourceAddress.Udp("", 1, SourceAddress.Sender.PORT)),
        Arguments.of("udp:5000", new SourceAddress.Udp("", 5000, SourceAddress.Sender.PORT)),
        Arguments.of(
            "udp:0.0.0.0:5000?sender=address",
            new SourceAddress.Udp("0.0.0.0", 5000, SourceAddress.Sender.ADDRESS)),
        Arguments.of(
            "file:C:\\log.csv?from=end",
            new SourceAddress.GrowingFile("C:\\log.csv", SourceAddress.From.END)),
        Arguments.of(
            "file:log.csv", new SourceAddress.GrowingFile("log.csv", SourceAddress.From.START)),
        Arguments.of("raw:one.raw", new SourceAddress.Raw("one.raw")),
        Arguments.of("typed:", new SourceAddress.Typed(30, SignalUnit.SIGNAL_MV)),
        Arguments.of("typed:?every_s=1&unit=K", new SourceAddress.Typed(1, SignalUnit.DELTA_K)),
        Arguments.of("virtual:", new SourceAddress.Virtual(1, 1, 0)),
        Arguments.of(
            "virtual:?seed=0&pace=0.1&speed_m_s=10", new SourceAddress.Virtual(0, 0.1, 10)));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("spellings")
  void aSpellingIsAnAddress(String text, SourceAddress address) {
    assertThat(SourceText.read(text)).isEqualTo(Checked.ok(address));
  }

  /** Just beyond each limit, and what cannot be. */
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "COM3, source.unknown",
    "ftp:there, source.unknown",
    "serial:, source.place-missing",
    "serial:COM3?baud=49, source.number",
    "serial:COM3?baud=4000001, source.number",
    "serial:COM3?bits=4, source.number",
    "serial:COM3?bits=9, source.number",
    "serial:COM3?stop=3, source.number",
    "serial:COM3?stop=0, source.number",
    "serial:COM3?parity=mark, source.word",
    "serial:COM3?speed=9600, source.option",
    "tcp:logger, source.port",
    "tcp:logger:0, source.port",
    "tcp:logger:65536, source.port",
    "tcp::5000, source.place-missing",
    "tcp:logger:5000?baud=9600, source.option",
    "udp:here, source.port",
    "udp:5000?sender=me, source.word",
    "file:, source.place-missing",
    "file:log.csv?from=middle, source.word",
    "raw:, source.place-missing",
    "typed:me, source.place-idle",
    "typed:?every_s=0.9, source.number",
    "typed:?every_s=3601, source.number",
    "typed:?unit=W, source.word",
    "virtual:?seed=-1, source.number",
    "virtual:?pace=0.09, source.number",
    "virtual:?speed_m_s=10.1, source.number",
    "virtual:there, source.place-idle"
  })
  void whatCannotBeIsRefused(String text, String id) {
    assertThat(SourceText.read(text).problems()).extracting(Problem::id).containsExactly(id);
    assertThat(SourceText.read(text).isOk()).isFalse();
  }

  @Test
  void everythingWrongIsSaidAtOnce() {
    List<Problem> problems = SourceText.read("serial:?baud=1&colour=red").problems();
    assertThat(problems)
        .extracting(p -> p.id() + " " + p.found())
        .containsExactlyInAnyOrder(
            "source.option colour",
            "source.place-missing serial:?baud=1&colour=red",
            "source.number 1");
  }

  @Test
  void aBreaksWordIsFoundAgain() {
    for (LiveGap gap : LiveGap.values()) {
      assertThat(LiveGap.of(gap.word())).contains(gap);
    }
    assertThat(LiveGap.of("broken")).isEmpty();
    assertThat(LiveGap.CUT.word()).isEqualTo("cut");
  }
}
