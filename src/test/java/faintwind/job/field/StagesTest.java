package faintwind.job.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Timeout(60)
class StagesTest {
  private static final int TASKS = 200;

  /** Each task of the first stage hands one on to the second. */
  private static List<Integer> done(int helpers, List<Integer> behind) throws IOException {
    List<Integer> first = new ArrayList<>();
    List<Integer> second = new ArrayList<>();
    AtomicInteger handed = new AtomicInteger();
    try (Stages stages = new Stages(2, helpers, 2)) {
      Consumer<Runnable> one = stages.stage(0);
      Consumer<Runnable> other = stages.stage(1);
      for (int i = 0; i < TASKS; i++) {
        int number = i;
        handed.incrementAndGet();
        one.accept(
            () -> {
              first.add(number);
              other.accept(
                  () -> {
                    behind.add(handed.get() - number);
                    second.add(number);
                  });
            });
      }
      stages.finish();
    }
    assertThat(first).isEqualTo(second);
    return second;
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 5})
  void eachStageDoesItsTasksInTheirOrderAndIsNeverFarBehind(int helpers) throws IOException {
    List<Integer> behind = new ArrayList<>();
    assertThat(done(helpers, behind)).hasSize(TASKS).isSorted();
    // before each stage two may wait, one more as it is handed over, and one is at work
    assertThat(behind).allMatch(tasks -> tasks <= 8);
  }

  @RepeatedTest(50)
  void twoThreadsNeverLoseATask() throws IOException {
    assertThat(done(1, new ArrayList<>())).hasSize(TASKS).isSorted();
  }

  /** The first stage may not run away from a second that is slow. */
  @Test
  void aSlowLastStageHoldsTheFirstBack() throws IOException, InterruptedException {
    CountDownLatch go = new CountDownLatch(1);
    AtomicInteger smoothed = new AtomicInteger();
    try (Stages stages = new Stages(2, 2, 2)) {
      Thread bringer =
          new Thread(
              () -> {
                for (int i = 0; i < 40; i++) {
                  stages
                      .stage(0)
                      .accept(
                          () -> {
                            smoothed.incrementAndGet();
                            stages.stage(1).accept(() -> waitFor(go));
                          });
                }
                stages.finish();
              });
      bringer.start();
      bringer.join(300);
      assertThat(smoothed).hasValueLessThanOrEqualTo(5);
      go.countDown();
      bringer.join();
      assertThat(smoothed).hasValue(40);
    }
  }

  private static void waitFor(CountDownLatch go) {
    try {
      go.await();
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2})
  void throwsWhatATaskHasThrownAndDoesNothingMore(int helpers) throws IOException {
    List<String> done = new ArrayList<>();
    try (Stages stages = new Stages(1, helpers, 5)) {
      Consumer<Runnable> stage = stages.stage(0);
      stage.accept(() -> done.add("before"));
      stage.accept(
          () -> {
            throw new UncheckedIOException(new IOException("disk full"));
          });
      assertThatThrownBy(
              () -> {
                stage.accept(() -> done.add("after"));
                stages.finish();
              })
          .hasRootCauseMessage("disk full");
    }
    assertThat(done).containsExactly("before");
  }

  @Test
  void givesTheResultsOfManyLogsInTheirOrder() throws IOException {
    List<Integer> numbers = new ArrayList<>();
    List<Callable<String>> tasks = List.of(() -> "a", () -> "b", () -> "c");
    assertThat(LogsAtOnce.each(tasks, (result, number) -> numbers.add(number)))
        .containsExactly("a", "b", "c");
    assertThat(numbers).containsExactly(1, 2, 3);
  }

  @Test
  void stopsAtTheFirstDiskThatFails() {
    List<Callable<String>> tasks =
        List.of(
            () -> "a",
            () -> {
              throw new IOException("disk full");
            });
    assertThatThrownBy(() -> LogsAtOnce.each(tasks, (result, number) -> {}))
        .isInstanceOf(IOException.class)
        .hasMessage("disk full");
  }
}
