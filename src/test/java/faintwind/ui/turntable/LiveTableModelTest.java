package faintwind.ui.turntable;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.turntable.Advice.Action;
import faintwind.job.live.LiveSession;
import faintwind.job.live.Rehearsal;
import faintwind.job.live.RehearsalHand;
import faintwind.job.live.RehearsalPlan;
import faintwind.job.turntable.TurnBeat;
import faintwind.message.Messages;
import faintwind.ui.part.Act;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;

/** The live turntable's model on a rehearsal, without a window; the beat moves when told. */
class LiveTableModelTest {
  private static final long SEED = 5;

  private final List<Path> tables = new ArrayList<>();
  private double now_s;

  @SuppressWarnings("NullAway.Init")
  @TempDir
  Path folder;

  @SuppressWarnings("NullAway.Init") // begun by each test
  private LiveSession session;

  @Test
  void countsTheBeatInBeforeTheArmTurnsAndTakesTheTableOnWhenAskedTo() throws Exception {
    LiveTableModel model = model();
    List<Thread> before = listening();
    model.start(Runnable::run);
    List<Thread> own = listening();
    own.removeAll(before);
    waitFor(Action.SWITCH_ON);
    press(model, "live-heater-on");
    waitFor(Action.SPIN_NOW);
    model.pace(1);
    model.pulse();
    press(model, "live-spin");
    assertThat(model.view().get().words()).isEqualTo("Starts in 4");
    assertThat(model.next().get().act()).isEmpty();
    assertThat(session.look().advice().action()).isEqualTo(Action.SPIN_NOW);
    now_s += 4 * 60.0 / beatsPerMinute() + 0.01;
    model.pulse();
    assertThat(session.look().advice().action()).isEqualTo(Action.KEEP_TURNING);
    assertThat(model.sweep_turns().getAsDouble()).isBetween(0.0, 0.1);
    for (int i = 0; i < 5; i++) {
      double before_s = session.look().time_s();
      WaitForAsyncUtils.waitFor(
          20, TimeUnit.SECONDS, () -> session.look().time_s() > before_s + 0.01);
      model.tap();
    }
    assertThat(session.look().marks()).as("a person's taps alone").hasSize(5);
    press(model, "live-stop-early");
    assertThat(session.spins()).hasSize(1);
    press(model, "live-end");
    assertThat(tables).containsExactly(session.table());
    for (Thread thread : own) {
      thread.join(20_000); // it writes its last rows, and the folder is taken away after the test
    }
  }

  private static List<Thread> listening() {
    return Thread.getAllStackTraces().keySet().stream()
        .filter(thread -> thread.getName().equals("faintwind-live"))
        .collect(Collectors.toList());
  }

  private int beatsPerMinute() {
    return session.look().advice().step().flatMap(s -> s.spin()).orElseThrow().beat().perMinute();
  }

  private static double seconds() {
    return System.nanoTime() / 1e9;
  }

  private void waitFor(Action action) throws TimeoutException {
    WaitForAsyncUtils.waitFor(
        60, TimeUnit.SECONDS, () -> session.look().advice().action() == action);
  }

  private static void press(LiveTableModel model, String id) {
    model.pulse();
    List<Act> acts = new ArrayList<>(model.next().get().others());
    model.next().get().act().ifPresent(acts::add);
    acts.stream().filter(a -> a.id().equals(id)).findFirst().orElseThrow().run().run();
  }

  private LiveTableModel model() {
    double pace = 200;
    Rehearsal rehearsal = new Rehearsal(RehearsalPlan.build(), SEED, pace);
    RehearsalHand hand = new RehearsalHand(rehearsal, RehearsalHand.Lead.PERSON, SEED, pace);
    LiveSession.Preparation plan = RehearsalPlan.preparation(RehearsalPlan.Length.SHORT);
    session =
        new LiveSession(
            rehearsal.input(), folder, plan, Optional.of(hand), LiveTableModelTest::seconds);
    TurnBeat beat = TurnBeat.seen(() -> now_s);
    return new LiveTableModel(
        Messages.of(Locale.ENGLISH),
        new LiveTableModel.Bench(session, plan, Optional.of(hand), beat, Optional.empty()),
        tables::add);
  }
}
