package faintwind.ui.formula;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.InForceGate;
import faintwind.job.JobWatch;
import faintwind.job.formula.ExportFormula;
import faintwind.job.formula.KeepFormula.Kept;
import faintwind.job.formula.LeaveOut;
import faintwind.job.formula.MeasuredKnown;
import faintwind.job.formula.MeasuredWhen;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.message.Where;
import faintwind.ui.work.Background;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** A fit goes on when its screen is left, and is found again. */
class FormulaModelsTest {
  private static final Path FOLDER = Path.of("rind");
  private static final Optional<Path> TABLE = Optional.of(Path.of("rind/runs.csv"));
  private static final Messages WORDS = Messages.of(Locale.ENGLISH);

  private final LinkedBlockingQueue<Runnable> javafx = new LinkedBlockingQueue<>();
  private final Background background = new Background(javafx::add);
  private final CountDownLatch enough = new CountDownLatch(1);
  private final FormulaModels models = new FormulaModels();

  /** Fits until it is told that it is enough, and refuses then. */
  private final class Slow implements FormulaWays {
    @Override
    public void leaveOut(Path table, LeaveOut.Choice choice, Consumer<Checked<Path>> told) {}

    @Override
    public Checked<MeasuredKnown> known(Path table) throws IOException {
      return MeasuredKnown.of(table);
    }

    @Override
    public Checked<Kept> fit(Path table, MeasuredWhen said, JobWatch watch) throws IOException {
      watch.progress("refits", 3, 10);
      try {
        enough.await();
      } catch (InterruptedException e) {
        throw new IOException(e);
      }
      return Checked.refused(Problem.error("file.missing", Where.file("spin07.csv"), ""));
    }

    @Override
    public Optional<Checked<Kept>> read() {
      return Optional.empty();
    }

    @Override
    public boolean isInForce(String file) {
      return true;
    }

    @Override
    public Kept drawnAgain(Kept kept, JobWatch watch) {
      return kept;
    }

    @Override
    public void made(Kept kept) {}

    @Override
    public InForceGate.Answer gate(Kept kept) {
      return new InForceGate.Answer(List.of(), List.of());
    }

    @Override
    public List<Problem> whyNotExplained(String reason) {
      return List.of();
    }

    @Override
    public void forceExplained(String file, String reason) {}

    @Override
    public void putInForce(String file) {}

    @Override
    public Checked<String> writeBuildLog() {
      return Checked.ok("");
    }

    @Override
    public Optional<String> due() {
      return Optional.empty();
    }

    @Override
    public void toTurntable() {}

    @Override
    public Checked<Path> export(String file, ExportFormula.Kind kind, Path target) {
      return Checked.ok(target);
    }

    @Override
    public void toField() {}
  }

  private FormulaModel open(Optional<Path> table) {
    return models.of(
        FOLDER, table, new Slow(), () -> new FormulaModel(WORDS, background, new Slow()));
  }

  /** Does what waits for the JavaFX thread until a stage is reached. */
  private void until(FormulaModel model, FormulaModel.Stage stage) throws InterruptedException {
    while (model.view().get().stage() != stage) {
      Runnable next = javafx.poll(20, TimeUnit.SECONDS);
      assertThat(next).as("waiting for " + stage).isNotNull();
      next.run();
    }
  }

  @Test
  void screenOpenedAgainFindsTheRunningFitAndWhatCameOfIt() throws InterruptedException {
    FormulaModel first = open(TABLE);
    first.fit();
    first.left();
    FormulaModel again = open(TABLE);
    assertThat(again.view().get().stage()).isEqualTo(FormulaModel.Stage.FITTING);
    assertThat(again.work()).isPresent();
    assertThat(again.work().orElseThrow().cancelled()).isFalse();

    enough.countDown();
    until(again, FormulaModel.Stage.REFUSED);
    FormulaModel third = open(TABLE);
    assertThat(third.work()).isEmpty();
    assertThat(third.view().get().problems()).anyMatch(line -> line.contains("spin07.csv"));
    assertThat(open(Optional.of(Path.of("rind/other.csv"))).view().get().stage())
        .isEqualTo(FormulaModel.Stage.READY);
  }

  @Test
  void runningFitKeepsNoOtherLongJobWaiting() throws InterruptedException {
    FormulaModel model = open(TABLE);
    model.fit();
    CountDownLatch converted = new CountDownLatch(1);
    background.run(
        watch -> {
          converted.countDown();
          return "";
        },
        done -> {},
        failed -> {});
    assertThat(converted.await(20, TimeUnit.SECONDS)).isTrue();
    enough.countDown();
    until(model, FormulaModel.Stage.REFUSED);
  }
}
