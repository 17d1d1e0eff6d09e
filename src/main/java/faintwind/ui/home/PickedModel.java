package faintwind.ui.home;

import faintwind.job.bench.Archive;
import faintwind.job.bench.CompareBench;
import faintwind.job.bench.ReadComparison;
import faintwind.message.Checked;
import faintwind.message.Problem;
import faintwind.ui.frame.Desk;
import faintwind.ui.work.DiskWords;
import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/** The instruments that are ticked, and what is done with them. */
public final class PickedModel {
  private final Desk desk;
  private final Set<Path> picked = new LinkedHashSet<>();
  private final ReadOnlyStringWrapper remark = new ReadOnlyStringWrapper("");
  private Consumer<Path> letGo = path -> {};
  private Consumer<CompareBench> toComparison = compared -> {};

  PickedModel(Desk desk) {
    this.desk = desk;
  }

  /** Closes an instrument that is open, before something is entered in it from here. */
  public void whenEntering(Consumer<Path> close) {
    letGo = close;
  }

  /** Shows several instruments side by side. */
  void whenCompared(Consumer<CompareBench> show) {
    toComparison = show;
  }

  /** Ticks an instrument or takes the tick away. */
  void pick(Path folder, boolean is) {
    if (is) {
      picked.add(folder);
    } else {
      picked.remove(folder);
    }
  }

  boolean isPicked(Path folder) {
    return picked.contains(folder);
  }

  int size() {
    return picked.size();
  }

  void clear() {
    picked.clear();
  }

  /** What became of those that were ticked. */
  ReadOnlyStringProperty remark() {
    return remark.getReadOnlyProperty();
  }

  /** Reads what is ticked, to be shown side by side. */
  void compare() {
    List<Path> these = List.copyOf(picked);
    desk.background()
        .run(
            watch -> ReadComparison.of(these, desk.words(), OffsetDateTime.now(desk.clock())),
            found -> {
              say(found.isOk() ? List.of() : found.problems());
              if (found instanceof Checked.Ok<CompareBench> ok) {
                toComparison.accept(ok.value());
              }
            },
            this::say);
  }

  /**
   * Takes what is ticked off the bench.
   *
   * @param who in whose name
   * @param then once it is done
   */
  void putAway(String who, Runnable then) {
    enter(these -> new Archive(desk.words(), desk.clock(), who).putAway(these), then);
  }

  /** Brings what is ticked back to it. */
  void bringBack(String who, Runnable then) {
    enter(these -> new Archive(desk.words(), desk.clock(), who).bringBack(these), then);
  }

  private interface Entering {
    List<Problem> into(List<Path> instruments) throws IOException;
  }

  private void enter(Entering entering, Runnable then) {
    List<Path> these = List.copyOf(picked);
    these.forEach(letGo);
    desk.background()
        .entry(
            watch -> entering.into(these),
            problems -> {
              say(problems);
              picked.clear();
              then.run();
            },
            this::say);
  }

  private void say(List<Problem> problems) {
    remark.set(problems.stream().map(desk.words()::line).collect(Collectors.joining("\n")));
  }

  private void say(IOException broke) {
    remark.set(DiskWords.say(broke, desk.words()));
  }
}
