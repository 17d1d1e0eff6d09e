package faintwind.guide.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.lesson.SchoolClass.Lesson;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;

class RepeatTest {
  private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");

  private static Lesson at(String begin) {
    return new Lesson(LocalDateTime.parse(begin), 45);
  }

  @Test
  void aYearsEndKeepsTheWeekdayAndTheTime() {
    assertThat(Repeat.WEEKLY.lessons(at("2026-12-15T09:50"), 4))
        .containsExactly(
            at("2026-12-15T09:50"),
            at("2026-12-22T09:50"),
            at("2026-12-29T09:50"),
            at("2027-01-05T09:50"));
    assertThat(Repeat.FORTNIGHTLY.lessons(at("2026-12-22T09:50"), 2))
        .containsExactly(at("2026-12-22T09:50"), at("2027-01-05T09:50"));
  }

  /** In March 2027 a day of the place has 23 hours, in October 2026 one has 25. */
  @Test
  void aChangeOfClocksKeepsTheTimeOfThePlace() {
    for (String first : List.of("2026-10-22T09:50", "2027-03-25T09:50")) {
      List<Lesson> two = Repeat.WEEKLY.lessons(at(first), 2);
      LocalDateTime second = two.get(1).at();
      assertThat(second.toLocalTime()).isEqualTo(two.get(0).at().toLocalTime());
      Duration between = Duration.between(two.get(0).at().atZone(BERLIN), second.atZone(BERLIN));
      assertThat(between.toHours()).isEqualTo(first.startsWith("2026") ? 7 * 24 + 1 : 7 * 24 - 1);
    }
  }
}
