package faintwind.job.live;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.live.SourceAddress;
import faintwind.calibration.run.SignalUnit;
import faintwind.device.Timekeeper;
import faintwind.guide.turntable.Advice.Action;
import faintwind.guide.turntable.ExpectedCourse;
import faintwind.message.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A plain meter at the turntable: readings are typed, and the guide follows them. */
class TypedSessionTest {
  private static final double EVERY_S = 30;
  private static final int ENOUGH = 110;

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  private final LiveSession.Preparation plan =
      RehearsalPlan.preparation(RehearsalPlan.Length.SHORT);
  private final Set<Action> told = new LinkedHashSet<>();
  private Instant now = Instant.parse("2026-11-21T12:00:00Z");
  private double heaterOn_s = Double.NaN;

  @SuppressWarnings("NullAway.Init") // begun by the test
  private TypedSession typed;

  @SuppressWarnings("NullAway.Init") // begun by the test
  private LiveSession session;

  private TypedSession typed() {
    Timekeeper time =
        new Timekeeper() {
          @Override
          public Instant now() {
            return now;
          }

          @Override
          public void pause(Duration wait) {
            now = now.plus(wait.isNegative() ? Duration.ZERO : wait);
          }
        };
    SourceAddress.Typed address = new SourceAddress.Typed(EVERY_S, SignalUnit.DELTA_K);
    return new TypedSession(address, "typed", this::asked, time);
  }

  /** Reads the meter as a person does: does what the guide says, then types what it shows. */
  private void asked(long number, double time_s) {
    session.clockShows(time_s);
    Action action = session.look().advice().action();
    told.add(action);
    if (action == Action.SWITCH_ON) {
      session.did();
      heaterOn_s = time_s;
      session.note("the draught came from the door");
    }
    ExpectedCourse course = plan.course();
    double shown =
        Double.isNaN(heaterOn_s)
            ? course.offset()
            : course.after(course.offset(), 0, time_s - heaterOn_s);
    assertThat(typed.enter(String.format(Locale.ROOT, "%.2f K", shown).replace('.', ',')).isOk())
        .isTrue();
    if (action == Action.SPIN_NOW) {
      session.did();
      session.note("the drive stopped");
      typed.end();
    }
    assertThat(number).isLessThan(ENOUGH);
  }

  @Test
  void typedReadingsDriveTheGuideFromZeroToTheFirstSpin() throws IOException {
    typed = typed();
    session =
        new LiveSession(
            typed.input(), folder, plan, Optional.empty(), () -> now.toEpochMilli() / 1e3);
    session.run();
    assertThat(told)
        .containsExactly(Action.KEEP_OFF, Action.SWITCH_ON, Action.WARMING, Action.SPIN_NOW);
    assertThat(Files.readAllLines(folder.resolve(LiveSession.RECORDING)).size()).isGreaterThan(60);
    List<String> rows = Files.readAllLines(session.table());
    assertThat(rows.get(rows.size() - 1))
        .as("a note of the spin that never ended stands with the last run")
        .contains("the draught came from the door")
        .contains("the drive stopped");
  }

  @Test
  void whatIsNoSingleNumberIsRefused() {
    typed = typed();
    assertThat(typed.enter("about 3").problems()).isNotEmpty();
    assertThat(typed.enter("> 3").problems())
        .extracting(Problem::id)
        .containsExactly("live.typed-not-exact");
  }
}
