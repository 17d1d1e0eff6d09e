package faintwind.job.bench;

import faintwind.files.FolderPrint;
import faintwind.files.KeptFile;
import faintwind.files.Sha256;
import faintwind.job.SoftwareVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The rows of a folder of many as they were last worked out, in a hidden file of that folder. A row
 * counts as long as nothing in its instrument's folder changed, no clock of it ended and no date
 * passed. Where the folder cannot be written, all is worked out each time.
 */
final class KeptRows {
  /** Fewer are worked out in a moment. */
  private static final int MANY = 25;

  private static final String FILE = ".bench-rows.json";

  private final Path bench;
  private final String basis;
  private final OffsetDateTime now;
  private final Map<String, Kept> before = new HashMap<>();
  private final List<Kept> after = new ArrayList<>();

  /** A row: what its folder was like, when it was worked out and until when it counts. */
  record Kept(String print, String seen, Optional<String> until, RowForm row) {}

  /** What every row depends on, and the rows. */
  record All(String basis, List<Kept> rows) {}

  KeptRows(Path bench, Locale locale, OffsetDateTime now) throws IOException {
    this.bench = bench;
    this.now = now;
    String all =
        String.join(
            "\n",
            SoftwareVersion.text(),
            locale.toLanguageTag(),
            FolderPrint.of(bench.resolve("checklist")),
            FolderPrint.of(bench.resolve("meters")));
    basis = Sha256.of(all.getBytes(StandardCharsets.UTF_8));
    KeptFile.read(bench.resolve(FILE), All.class)
        .filter(kept -> kept.basis().equals(basis))
        .ifPresent(kept -> kept.rows().forEach(row -> before.put(row.row().folder(), row)));
  }

  /** The row that still counts. */
  Optional<BenchRow> row(Path instrument, String print) {
    Optional<Kept> known =
        Optional.ofNullable(before.get(String.valueOf(instrument.getFileName())))
            .filter(kept -> kept.print().equals(print))
            .filter(kept -> !OffsetDateTime.parse(kept.seen()).isAfter(now))
            .filter(k -> k.until().filter(u -> !OffsetDateTime.parse(u).isAfter(now)).isEmpty());
    known.ifPresent(this::keep);
    return known.map(kept -> kept.row().row(bench));
  }

  /** Remembers a row that was worked out; a broken one is looked at again each time. */
  BenchRow worked(BenchRow row, String print) {
    if (row.need().kind() != BenchRow.Kind.BROKEN) {
      Optional<String> until = row.until().map(OffsetDateTime::toString);
      keep(new Kept(print, now.toString(), until, RowForm.of(row)));
    }
    return row;
  }

  private synchronized void keep(Kept kept) {
    after.add(kept);
  }

  /** Keeps what was worked out for the next time. */
  synchronized void close() {
    boolean same = after.size() == before.size() && before.values().containsAll(after);
    if (after.size() >= MANY && !same) {
      KeptFile.write(bench.resolve(FILE), new All(basis, after));
    }
  }
}
