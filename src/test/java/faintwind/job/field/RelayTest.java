package faintwind.job.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class RelayTest {

  @Test
  void doesTasksInTheirOrderAndIsNeverFarBehind() throws IOException {
    List<Integer> done = new ArrayList<>();
    AtomicInteger handed = new AtomicInteger();
    List<Integer> behind = new ArrayList<>();
    try (Relay relay = new Relay(2)) {
      for (int i = 0; i < 50; i++) {
        int number = i;
        handed.incrementAndGet();
        relay.run(
            () -> {
              done.add(number);
              behind.add(handed.get() - number);
            });
      }
      relay.finish();
    }
    assertThat(done).hasSize(50).isSorted();
    assertThat(behind).allMatch(tasks -> tasks <= 4);
  }

  @Test
  void throwsWhatATaskHasThrown() throws IOException {
    try (Relay relay = new Relay(2)) {
      relay.run(
          () -> {
            throw new UncheckedIOException(new IOException("disk full"));
          });
      assertThatThrownBy(relay::finish).hasRootCauseMessage("disk full");
    }
  }

  @Test
  void doesNothingMoreAfterATaskThatFailed() throws IOException {
    List<String> done = new ArrayList<>();
    try (Relay relay = new Relay(5)) {
      relay.run(() -> done.add("before"));
      relay.run(
          () -> {
            throw new UncheckedIOException(new IOException("disk full"));
          });
      relay.run(() -> done.add("after"));
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
