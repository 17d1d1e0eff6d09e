package faintwind.ui.listen;

import faintwind.calibration.live.LiveRow;
import faintwind.calibration.speed.SpeedRow;
import faintwind.job.OutputPath;
import faintwind.job.World;
import faintwind.job.live.Listen;
import faintwind.job.live.LiveCount;
import faintwind.job.live.LiveListener;
import faintwind.job.live.LiveNews;
import faintwind.job.live.RecordingFiles;
import faintwind.job.live.SourceLook;
import faintwind.message.AmountText;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/**
 * A recording that the window makes: it goes on, on a thread of its own, until it is ended or its
 * source ends; what arrived is in its file at once.
 */
public final class ListenModel {
  private static final long BETWEEN_ns = 150_000_000L;

  /** Hears nothing. */
  public static final Hearer NOBODY = (time_s, speed) -> {};

  private final Messages words;
  private final Executor javafx;
  private final Path folder;
  private final ReadOnlyObjectWrapper<View> view = new ReadOnlyObjectWrapper<>(View.IDLE);
  private Consumer<Path> over = file -> {};
  private Hearer hearer = NOBODY;
  private Optional<Listen.Ready> running = Optional.empty();

  /** Hears the air speed of each row, on the JavaFX thread. */
  @FunctionalInterface
  public interface Hearer {
    void speed(double time_s, SpeedRow speed);
  }

  /** Where a recording stands. */
  public enum Stage {
    IDLE,
    LISTENING,
    OVER
  }

  /**
   * What is shown of it.
   *
   * @param stage where it stands
   * @param sentence the last reading, or what it came to
   * @param asked what is asked of a person now; empty for nothing
   * @param problems what happened last, in words
   */
  public record View(Stage stage, String sentence, String asked, List<String> problems) {
    static final View IDLE = new View(Stage.IDLE, "", "", List.of());

    public View {
      problems = List.copyOf(problems);
    }

    View saying(String what) {
      return new View(stage, what, asked, problems);
    }

    View asking(String what) {
      return new View(stage, sentence, what, problems);
    }

    View with(List<String> what) {
      return new View(stage, sentence, asked, what);
    }
  }

  /**
   * A recording that has not begun.
   *
   * @param javafx {@code Platform::runLater}
   * @param folder where recordings go; made where it is not there
   */
  public ListenModel(Messages words, Executor javafx, Path folder) {
    this.words = words;
    this.javafx = javafx;
    this.folder = folder;
  }

  public ReadOnlyObjectProperty<View> view() {
    return view.getReadOnlyProperty();
  }

  /** Who takes the file when it is over, from now on. */
  public void whenOver(Consumer<Path> taker) {
    over = taker;
  }

  /** Who hears the speeds, from now on, where the recording has a calibration. */
  public void whenSpeed(Hearer taker) {
    hearer = taker;
  }

  /** Begins. */
  public void begin(Listen.What what) {
    view.set(new View(Stage.LISTENING, words.text("listen.waiting"), "", List.of()));
    Thread thread = new Thread(() -> run(what), "faintwind-listen");
    thread.setDaemon(true);
    thread.start();
  }

  private void run(Listen.What what) {
    try {
      Files.createDirectories(folder);
      Path file = freeName();
      Checked<Listen.Ready> opened =
          Listen.open(what, new OutputPath(file, OutputPath.Existing.KEEP), this::ask);
      if (!(opened instanceof Checked.Ok<Listen.Ready> ok)) {
        post(() -> refused(opened.problems()));
        return;
      }
      Listen.Ready ready = ok.value();
      ready.recording().listen(new Ear(ready));
      post(() -> running = Optional.of(ready));
      Checked<LiveCount> done = ready.recording().run();
      post(() -> ended(done, file));
    } catch (IOException e) {
      post(() -> view.set(View.IDLE.with(List.of(words.sentence(World.problem(e))))));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private Path freeName() {
    Path file = folder.resolve("recording-1.csv");
    for (int i = 2; Files.exists(file) || !RecordingFiles.raw(file).isEmpty(); i++) {
      file = folder.resolve("recording-" + i + ".csv");
    }
    return file;
  }

  private void ask(long number, double time_s) {
    SourceLook.beep();
    String time = AmountText.quantity(time_s, "s", 6, words.locale());
    post(() -> view.set(view.get().asking(words.text("listen.ask-window", number, time))));
  }

  private void refused(List<Problem> problems) {
    running = Optional.empty();
    view.set(View.IDLE.with(problems.stream().map(words::line).toList()));
  }

  private void ended(Checked<LiveCount> done, Path file) {
    running = Optional.empty();
    if (!(done instanceof Checked.Ok<LiveCount> ok)) {
      refused(done.problems());
      return;
    }
    LiveCount count = ok.value();
    String name = String.valueOf(file.getFileName());
    view.set(
        new View(
            Stage.OVER,
            words.text("listen.summary", name, count.rows(), count.gaps(), count.unreadable()),
            "",
            count.notes(name).stream().map(words::line).toList()));
    over.accept(file);
  }

  /** A reading was typed. */
  public void enter(String typed) {
    running
        .flatMap(Listen.Ready::typed)
        .map(session -> session.enter(typed))
        .ifPresent(
            entered ->
                view.set(
                    view.get()
                        .asking(entered.isOk() ? "" : view.get().asked())
                        .with(entered.problems().stream().map(words::sentence).toList())));
  }

  /** Whether it is recording. */
  public boolean isRecording() {
    return view.get().stage() == Stage.LISTENING;
  }

  /** Whether readings are typed. */
  public boolean isTyped() {
    return running.flatMap(Listen.Ready::typed).isPresent();
  }

  /** Ends the recording; the rest of it is told through the view. */
  public void stop() {
    try {
      if (running.isPresent()) {
        running.get().recording().stop();
      }
    } catch (IOException e) {
      view.set(view.get().with(List.of(words.sentence(World.problem(e)))));
    }
  }

  private void post(Runnable what) {
    javafx.execute(what);
  }

  /** Hears of the recording on its own thread; hands on what is new now and then. */
  private final class Ear implements LiveListener {
    private final Listen.Ready ready;
    private long told_ns = System.nanoTime() - BETWEEN_ns;
    private String speed = "";

    Ear(Listen.Ready ready) {
      this.ready = ready;
    }

    @Override
    public void row(LiveRow row) {
      if (System.nanoTime() - told_ns > BETWEEN_ns) {
        told_ns = System.nanoTime();
        String sentence = sentence(row);
        post(() -> view.set(view.get().saying(sentence)));
      }
    }

    @Override
    public void speed(LiveRow row, SpeedRow found) {
      speed =
          found.speed_m_s().isPresent()
              ? words.text(
                  "listen.speed",
                  number(found.speed_m_s().getAsDouble(), 3),
                  number(found.u95_m_s().orElse(0), 2))
              : "";
      post(() -> hearer.speed(row.time_s(), found));
    }

    private String sentence(LiveRow row) {
      String signal =
          row.signal().isPresent()
              ? AmountText.quantity(
                  row.signal().getAsDouble(), ready.head().unit().symbol(), 5, words.locale())
              : "–";
      String rows = Numerals.grouped(ready.recording().rows());
      String sentence = words.text("listen.row", signal, number(row.time_s(), 6), rows);
      return speed.isEmpty() ? sentence : sentence + " " + speed;
    }

    private String number(double value, int digits) {
      return AmountText.number(value, digits, words.locale());
    }

    @Override
    public void happened(LiveNews news) {
      List<String> problems = new ArrayList<>();
      switch (news.kind()) {
        case CONNECTED, ENDED -> {}
        case GAP, UNREADABLE, OTHER_SENDER, RECONNECTING ->
            problems.add(words.sentence(news.problem()));
      }
      post(() -> view.set(view.get().with(problems)));
    }
  }
}
