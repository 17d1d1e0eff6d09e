package faintwind.job.pool;

import faintwind.calibration.Parameter;
import faintwind.calibration.pool.Pool;
import faintwind.calibration.pool.Shared;
import faintwind.calibration.pool.StandsOut;
import faintwind.files.JsonForm;
import faintwind.job.pool.PoolInstruments.Done;
import faintwind.job.pool.PoolInstruments.Made;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a class shares and who stands out, in words and for another program. */
public final class PoolText {
  private final Messages words;

  public PoolText(Messages words) {
    this.words = words;
  }

  /**
   * What is shared.
   *
   * @param name of the unknown of the fit
   * @param value of the class
   * @param standardUncertainty of the value
   * @param between standard deviation between the instruments
   * @param unit of the three
   */
  public record SharedRow(
      String name, double value, double standardUncertainty, double between, String unit) {}

  private record InstrumentRow(
      String folder, Optional<String> calibration, Optional<Off> standsOut, List<String> leftOut) {}

  private record Off(String in, double deviations) {}

  private record Whole(List<SharedRow> shared, List<InstrumentRow> instruments) {}

  /** What the class shares, a row each. */
  static List<SharedRow> rows(Pool.Spread spread) {
    List<SharedRow> rows = new ArrayList<>();
    for (Shared shared : Shared.values()) {
      int k = shared.ordinal();
      double mean = spread.means().get(k);
      Parameter found = shared.parameter(mean, spread.unsure().get(k));
      double between = shared.parameter(mean, spread.between().get(k)).u();
      rows.add(new SharedRow(shared.unknown(), found.value(), found.u(), between, found.unit()));
    }
    return rows;
  }

  /** For another program. */
  public String json(Done done, Map<Path, Path> files) {
    List<InstrumentRow> instruments = new ArrayList<>();
    for (Made made : done.made()) {
      Path file = files.get(made.folder());
      instruments.add(
          new InstrumentRow(
              made.folder().toString(),
              Optional.ofNullable(file).map(Path::toString),
              made.standsOut().map(o -> new Off(o.word(), o.deviations())),
              List.of()));
    }
    done.leftOut()
        .forEach(
            (folder, why) ->
                instruments.add(
                    new InstrumentRow(
                        folder.toString(),
                        Optional.empty(),
                        Optional.empty(),
                        why.stream().filter(Problem::isError).map(Problem::id).toList())));
    return JsonForm.text(new Whole(rows(done.spread()), instruments));
  }

  /** For a person. */
  public List<String> lines(Done done, Map<Path, Path> files) {
    List<String> lines = new ArrayList<>();
    lines.add(words.text("pool.head", pooled(done)));
    for (SharedRow row : rows(done.spread())) {
      lines.add(
          words.text(
              "pool.row",
              words.text(new StandsOut(row.name(), 0).key()),
              Numerals.digits(row.value(), 3),
              Numerals.digits(row.standardUncertainty(), 2),
              Numerals.digits(row.between(), 2),
              row.unit().equals("1") ? "" : " " + row.unit()));
    }
    for (Made made : done.made()) {
      String name = made.outcome().calibration().origin().instrumentId();
      made.standsOut()
          .ifPresent(
              o ->
                  lines.add(
                      words.text(
                          "pool.off",
                          name,
                          words.text(o.key()),
                          Numerals.digits(o.deviations(), 2))));
      Path file = files.get(made.folder());
      if (file != null) {
        lines.add(words.text("pool.written", name, file.toString()));
      }
    }
    done.leftOut()
        .keySet()
        .forEach(folder -> lines.add(words.text("pool.left-out", folder.toString())));
    return lines;
  }

  private static long pooled(Done done) {
    return done.made().stream().filter(made -> made.standsOut().isEmpty()).count();
  }
}
