package faintwind.job.lesson;

import faintwind.guide.Today;
import faintwind.job.record.PrintSteps;
import faintwind.message.Checked;
import faintwind.message.Messages;
import faintwind.message.Problem;
import faintwind.message.Where;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;

/**
 * Everything that a pair needs for a lesson as one print: the sheets of the steps that fit, with
 * their cautions, tools, parts and places for readings.
 */
public final class PairPrint {
  private final Clock clock;
  private final Messages words;

  public PairPrint(Clock clock, Messages words) {
    this.clock = clock;
    this.words = words;
  }

  /**
   * Writes a print for every pair for which something fits, each with its folder's name at the end
   * of the file's.
   *
   * @return the files; refused where nothing fits for anybody
   * @throws IOException where the disk or a permission fails
   */
  public Checked<List<Path>> writeAll(ClassLook look, int minutes, Path target) throws IOException {
    List<Path> written = new ArrayList<>();
    for (PairLook pair : look.pairs()) {
      if (pair.pair().number() > 0) {
        Checked<Path> one = write(look, pair, minutes, beside(target, pair));
        one.fold((file, notes) -> written.add(file), problems -> false);
      }
    }
    return written.isEmpty()
        ? Checked.refused(
            Problem.error("class.nothing-fits", Where.NOWHERE, String.valueOf(minutes)))
        : Checked.ok(written);
  }

  /** The file of a pair: lesson.pdf becomes lesson-pair-01.pdf. */
  public static Path beside(Path target, PairLook pair) {
    String name = String.valueOf(target.getFileName());
    int dot = name.lastIndexOf('.') < 0 ? name.length() : name.lastIndexOf('.');
    return target.resolveSibling(
        name.substring(0, dot) + "-" + pair.pair().folder() + name.substring(dot));
  }

  /**
   * Writes it.
   *
   * @param target {@code .pdf} gives PDF, anything else HTML
   * @return refused where the pair's folder tells nothing, or no step fits
   * @throws IOException where the disk or a permission fails
   */
  public Checked<Path> write(ClassLook look, PairLook pair, int minutes, Path target)
      throws IOException {
    Where where = Where.file(pair.pair().folder());
    if (pair.trouble().isPresent() || pair.known().isEmpty()) {
      return Checked.refused(Problem.error("class.pair-trouble", where, pair.trouble().orElse("")));
    }
    List<String> steps =
        ClassText.today(pair, look, minutes)
            .map(today -> today.items().stream().map(Today.Item::step).toList())
            .orElse(List.of())
            .stream()
            .map(step -> step.step().id())
            .toList();
    return steps.isEmpty()
        ? Checked.refused(Problem.error("class.nothing-fits", where, String.valueOf(minutes)))
        : new PrintSteps(clock, words).write(pair.known().get().looked().view(), steps, target);
  }
}
