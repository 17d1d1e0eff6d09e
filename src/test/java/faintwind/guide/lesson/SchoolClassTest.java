package faintwind.guide.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.lesson.SchoolClass.Lesson;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SchoolClassTest {
  private static final LocalDateTime MONDAY = LocalDateTime.parse("2026-03-02T08:00");
  private static final Lesson FIRST = new Lesson(MONDAY, 45);
  private static final Lesson SECOND = new Lesson(MONDAY.plusDays(7), 45);
  private static final SchoolClass CLASS =
      new SchoolClass(
          "7b",
          "draughts",
          List.of(FIRST, SECOND),
          List.of(),
          List.of("builds", "checks", "writes"),
          Optional.empty(),
          Optional.empty());

  @Test
  void aLessonRunsUntilItsLastMinute() {
    assertThat(FIRST.end()).isEqualTo(MONDAY.plusMinutes(45));
    assertThat(CLASS.lesson(MONDAY.minusDays(1))).contains(FIRST);
    assertThat(CLASS.lesson(MONDAY.plusMinutes(44))).contains(FIRST);
    assertThat(CLASS.lesson(MONDAY.plusMinutes(45))).contains(SECOND);
    assertThat(CLASS.lesson(MONDAY.plusDays(8))).isEmpty();
  }

  @Test
  void theNextLessonBeginsThenOrLater() {
    assertThat(CLASS.lessonAfter(MONDAY)).contains(FIRST);
    assertThat(CLASS.lessonAfter(MONDAY.plusSeconds(1))).contains(SECOND);
    assertThat(CLASS.number(FIRST)).isEqualTo(1);
    assertThat(CLASS.number(SECOND)).isEqualTo(2);
  }

  @Test
  void rolesAreTakenInTurns() {
    assertThat(CLASS.rolesIn(1)).containsExactly("builds", "checks", "writes");
    assertThat(CLASS.rolesIn(2)).containsExactly("writes", "builds", "checks");
    assertThat(CLASS.rolesIn(4)).isEqualTo(CLASS.rolesIn(1));
  }
}
