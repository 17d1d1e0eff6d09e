package faintwind.ui.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import faintwind.job.design.DesignWork;
import faintwind.job.design.Sized;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.physics.sheet.Outcome;
import faintwind.physics.sheet.OutcomeId;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DesignNumbersTest {
  private static final Pattern NUMBER = Pattern.compile("(?<![\\w⁻])\\d+(\\.\\d+)?");

  private final Messages words = Messages.of(Locale.ENGLISH);
  private final Sized worked;

  DesignNumbersTest() throws IOException {
    String text = Files.readString(Path.of("src/test/resources/design/half-inch-copper.json"));
    DesignWork work = ((Checked.Ok<DesignWork>) DesignWork.open(Optional.empty())).value();
    worked = ((Checked.Ok<Sized>) work.read(text)).value();
  }

  private List<Double> numbers(OutcomeId id) {
    List<Double> all = new ArrayList<>();
    Matcher m = NUMBER.matcher(new DesignNumbers(worked, words).line(id).orElseThrow());
    while (m.find()) {
      all.add(Double.parseDouble(m.group()));
    }
    return all;
  }

  /** The line's own arithmetic gives the result that stands at its end. */
  @ParameterizedTest
  @CsvSource({
    "STILL_DELTA, 1000",
    "DELTA_AT_1, 1000",
    "DELTA_AT_3, 1000",
    "TIME_CONSTANT_STILL, 1000",
    "TIME_CONSTANT_AT_1, 1000",
    "TIME_CONSTANT_AT_3, 1000",
    "WARM_UP_RATE, 1",
    "HEATER_CURRENT, 1000",
    "BATTERY_TIME, 1",
    "SUN_SHARE, 0.1",
    "RANGE_SHARE, 100"
  })
  void quotientComesOut(OutcomeId id, double scale) {
    List<Double> n = numbers(id);
    assertThat(scale * n.get(0) / n.get(1)).isCloseTo(n.get(2), within(0.01 * n.get(2)));
  }

  @Test
  void powerIsVoltageSquaredOverTheWarmResistor() {
    List<Double> n = numbers(OutcomeId.HEATER_POWER);
    assertThat(n.get(0) * n.get(0) / n.get(1)).isCloseTo(n.get(2), within(0.01 * n.get(2)));
  }

  @Test
  void smallestSpeedAddsLoggerAndRoom() {
    List<Double> n = numbers(OutcomeId.SMALLEST_SPEED);
    assertThat(Math.hypot(n.get(0), n.get(1))).isCloseTo(n.get(2), within(0.01 * n.get(2)));
    assertThat(n.get(4)).isCloseTo(0.0181, within(5e-4));
  }

  @Test
  void everyOutcomeTellsItsEquationAndSource() {
    DesignWords said = new DesignWords(words);
    for (Outcome q : worked.sheet().quantities()) {
      String id = q.id().id().toLowerCase(Locale.ROOT).replace('_', '-');
      assertThat(said.why(id, worked).text()).as(id).hasSizeGreaterThan(9);
      assertThat(said.why(id, worked).result()).as(id).isNotBlank();
    }
  }
}
