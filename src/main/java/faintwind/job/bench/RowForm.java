package faintwind.job.bench;

import faintwind.guide.Due;
import faintwind.record.ReadingVerdict;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A row as it stands in a file: times and words as text. */
record RowForm(
    String folder,
    String name,
    BenchRow.Need need,
    Optional<Counts> calibration,
    Optional<Jar> jar,
    List<Runs> clocks,
    int waivers) {

  record Counts(
      String file,
      Optional<BenchRow.Range> range,
      Optional<String> u95Word,
      String due,
      String cause,
      boolean past) {}

  record Jar(String amount, String at, Optional<ReadingVerdict> verdict, Optional<Double> drift) {}

  record Runs(String label, String ends) {}

  static RowForm of(BenchRow row) {
    return new RowForm(
        String.valueOf(row.folder().getFileName()),
        row.name(),
        row.need(),
        row.inForce()
            .map(
                f ->
                    new Counts(
                        f.file(),
                        f.range(),
                        f.range().map(r -> r.grade().name().toLowerCase(Locale.ROOT)),
                        String.valueOf(f.due().at()),
                        f.due().cause().name().toLowerCase(Locale.ROOT),
                        f.past())),
        row.jar().map(j -> new Jar(j.amount(), String.valueOf(j.at()), j.verdict(), j.drift())),
        row.clocks().stream().map(c -> new Runs(c.label(), String.valueOf(c.ends()))).toList(),
        row.waivers());
  }

  BenchRow row(Path bench) {
    return new BenchRow(
        bench.resolve(folder),
        name,
        need,
        calibration.map(
            c ->
                new BenchRow.InForce(
                    c.file(),
                    c.range(),
                    new Due(
                        OffsetDateTime.parse(c.due()),
                        Due.Cause.valueOf(c.cause().toUpperCase(Locale.ROOT))),
                    c.past())),
        jar.map(
            j ->
                new BenchRow.JarLevel(
                    j.amount(), OffsetDateTime.parse(j.at()), j.verdict(), j.drift())),
        clocks.stream()
            .map(c -> new BenchRow.Clock(c.label(), OffsetDateTime.parse(c.ends())))
            .toList(),
        waivers);
  }
}
