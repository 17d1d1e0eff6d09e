package faintwind.job.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.files.lesson.ClassFile;
import faintwind.guide.lesson.SchoolClass;
import faintwind.guide.lesson.SchoolClass.Lesson;
import faintwind.guide.lesson.SchoolClass.Pair;
import faintwind.message.Messages;
import faintwind.ui.Cellar;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Who turns in which lesson, and all that is printed for it. */
class TurntableQueueTest {
  private static final OffsetDateTime NOW = OffsetDateTime.parse("2026-11-24T10:05Z");
  private static final Messages WORDS = Messages.of(Locale.UK);
  private static final List<Lesson> LESSONS =
      List.of(
          new Lesson(LocalDateTime.parse("2026-11-24T09:50"), 45),
          new Lesson(LocalDateTime.parse("2026-11-26T09:50"), 45),
          new Lesson(LocalDateTime.parse("2026-11-28T09:50"), 90));

  @TempDir static Path folder;

  @BeforeAll
  static void threeThatWaitAndOneThatBegins() throws IOException {
    for (int i = 1; i <= 3; i++) {
      Cellar.begin("Pair " + i).design().before("warm-up-run").into(folder, "pair-0" + i);
    }
    Cellar.begin("Pair 4").into(folder, "pair-04");
  }

  private static ClassLook look(List<Lesson> lessons, OffsetDateTime now) throws IOException {
    List<Pair> pairs =
        List.of(
            new Pair(1, "pair-01", "Otters"),
            new Pair(2, "pair-02", ""),
            new Pair(3, "pair-03", ""),
            new Pair(4, "pair-04", ""));
    ClassFile.write(
        folder,
        new SchoolClass(
            "Year 10", "", lessons, pairs, List.of(), Optional.empty(), Optional.empty()));
    return new LookAtClass(folder, WORDS)
        .look(now)
        .fold(
            (look, notes) -> look,
            p -> {
              throw new AssertionError(p.toString());
            });
  }

  @Test
  void sessionThatDoesNotFitIntoTheRestOfALessonBeginsTheNext() throws IOException {
    ClassLook look = look(LESSONS, NOW);
    List<ClassLook.Turn> queue = look.queue();
    double minutes = queue.get(0).minutes();
    assertThat(minutes).as("longer than the 30 minutes that are left").isGreaterThan(30);
    assertThat(queue).extracting(turn -> turn.pair().pair().number()).containsExactly(1, 2, 3);
    assertThat(queue.get(0).lesson()).hasValue(LESSONS.get(1));
    assertThat(queue.get(0).from()).isZero();
    assertThat(queue.get(0).isTooLong()).isEqualTo(minutes > 45);
    assertThat(queue.get(1).lesson()).hasValue(LESSONS.get(2));
    assertThat(queue.get(2).lesson()).isEmpty();
    List<String> said = new ClassText(WORDS).queue(look);
    assertThat(said.get(0)).startsWith("Pair 1, Otters: lesson 2, 09:50 to ");
    assertThat(said.get(2)).startsWith("Pair 3: after the last lesson, ");
    assertThat(new ClassText(WORDS).where(look, queue.get(0).pair())).isEqualTo("Turntable");
    ClassLook early = look(LESSONS, NOW.plusDays(3));
    assertThat(new ClassText(WORDS).where(early, early.pairs().get(0)))
        .startsWith("Turntable, 09:50 to ");
  }

  @Test
  void withoutLessonsMinutesAreCounted() throws IOException {
    ClassLook look = look(List.of(), NOW);
    double minutes = look.queue().get(0).minutes();
    assertThat(look.queue())
        .extracting(ClassLook.Turn::from)
        .containsExactly(0.0, minutes, 2 * minutes);
    assertThat(look.minutes()).isEqualTo(45);
    assertThat(new ClassText(WORDS).queue(look).get(0)).startsWith("Pair 1, Otters: minute 0 to ");
  }

  @Test
  void onlyWhatIsLeftOfTheLessonIsPlanned() throws IOException {
    assertThat(look(LESSONS, NOW).minutes()).isEqualTo(30);
    assertThat(look(LESSONS, NOW.minusDays(1)).minutes()).isEqualTo(45);
    assertThat(look(LESSONS, NOW.plusMinutes(29)).minutes()).isEqualTo(1);
    assertThat(look(LESSONS, NOW.plusDays(30)).minutes()).isEqualTo(45);
  }

  @Test
  void everyPairHasItsPrint() throws IOException {
    ClassLook look = look(LESSONS, NOW);
    Path target = folder.resolve("sheets.html");
    PairPrint print = new PairPrint(Clock.fixed(NOW.toInstant(), ZoneOffset.UTC), WORDS);
    List<Path> written =
        print.writeAll(look, 60, target).fold((all, notes) -> all, problems -> List.of());
    assertThat(written).contains(folder.resolve("sheets-pair-04.html"));
    assertThat(Files.readString(folder.resolve("sheets-pair-04.html")))
        .contains("Write down what the instrument is for");
    assertThat(target).doesNotExist();
    assertThat(print.writeAll(look, 0, target).isOk()).as("nothing fits into no time").isFalse();
  }
}
