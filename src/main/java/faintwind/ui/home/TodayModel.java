package faintwind.ui.home;

import faintwind.guide.Today;
import faintwind.guide.Today.Bench;
import faintwind.job.step.TodayText;
import faintwind.ui.frame.Desk;
import faintwind.ui.instrument.OpenInstrument.Standpoint;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** "I have 40 minutes": what fits, over all instruments of the folder. */
final class TodayModel {
  private static final int MOST_min = 600;

  private final Desk desk;
  private final TodayText words;
  private final Supplier<List<Standpoint>> instruments;
  private final StringProperty typed = new SimpleStringProperty("40");
  private final ReadOnlyObjectWrapper<Optional<Plan>> plan =
      new ReadOnlyObjectWrapper<>(Optional.empty());
  private final ReadOnlyStringWrapper remark = new ReadOnlyStringWrapper("");

  /**
   * A plan in words.
   *
   * @param title in a sentence
   * @param steps each with the instrument that it opens
   * @param more tools, parts and what goes on by itself
   * @param today the same as data
   */
  record Plan(String title, List<Line> steps, List<String> more, Today today) {
    Plan {
      steps = List.copyOf(steps);
      more = List.copyOf(more);
    }
  }

  /** A step, and the folder of its instrument. */
  record Line(String text, Path folder) {}

  /**
   * A model.
   *
   * @param instruments of the folder, in the order of who needs a person first
   */
  TodayModel(Desk desk, Supplier<List<Standpoint>> instruments) {
    this.desk = desk;
    this.instruments = instruments;
    words = new TodayText(desk.clock(), desk.words());
  }

  StringProperty typed() {
    return typed;
  }

  ReadOnlyObjectProperty<Optional<Plan>> plan() {
    return plan.getReadOnlyProperty();
  }

  /** What went wrong, or where the page is. */
  ReadOnlyStringProperty remark() {
    return remark.getReadOnlyProperty();
  }

  /** Works out what fits into the minutes that were typed. */
  void ask() {
    Optional<Integer> minutes = minutes();
    remark.set(minutes.isPresent() ? "" : desk.text("today.not-minutes", MOST_min));
    plan.set(minutes.map(this::plan));
  }

  private Optional<Integer> minutes() {
    String text = typed.get().strip();
    return text.matches("\\d{1,3}")
        ? Optional.of(Integer.valueOf(text)).filter(m -> m > 0 && m <= MOST_min)
        : Optional.empty();
  }

  private Plan plan(int minutes) {
    Map<Bench, Path> folders = new HashMap<>();
    List<Bench> benches = new ArrayList<>();
    for (Standpoint standpoint : instruments.get()) {
      TodayText.bench(standpoint.view(), OffsetDateTime.now(desk.clock()))
          .ifPresent(
              bench -> {
                benches.add(bench);
                folders.put(bench, standpoint.view().path());
              });
    }
    Today today = Today.of(benches, minutes);
    List<String> texts = words.steps(today);
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      lines.add(
          new Line(
              texts.get(i), Objects.requireNonNull(folders.get(today.items().get(i).bench()))));
    }
    List<String> more = new ArrayList<>(words.layOut(today));
    more.addAll(words.running(today));
    return new Plan(words.title(today, minutes), lines, more, today);
  }

  /** Puts the plan on paper where a person says. */
  void print() {
    Optional<Path> target =
        plan.get()
            .flatMap(
                p -> desk.files().save(desk.text("today.paper"), desk.text("today.paper.file")));
    target.ifPresent(this::print);
  }

  private void print(Path target) {
    Today today = plan.get().orElseThrow().today();
    int minutes = minutes().orElse(today.minutes());
    desk.background()
        .runQuietly(
            watch -> {
              words.write(today, minutes, target);
              return target;
            },
            done -> {
              remark.set(desk.text("today.kept", done));
              desk.files().show(done);
            },
            world -> remark.set(String.valueOf(world.getMessage())));
  }

  /** Opens the instrument of a line. */
  static Runnable opening(Line line, Consumer<Path> open) {
    return () -> open.accept(line.folder());
  }
}
