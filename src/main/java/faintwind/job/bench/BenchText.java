package faintwind.job.bench;

import faintwind.files.JsonForm;
import faintwind.files.RowText;
import faintwind.job.bench.BenchRow.InForce;
import faintwind.message.DateText;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.record.ReadingVerdict;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The instruments of a folder in words, as a table, and for another program. */
public final class BenchText {
  private static final List<String> COLUMNS =
      List.of(
          "folder",
          "name",
          "need",
          "stage",
          "step",
          "reason",
          "calibration",
          "lowest_m_s",
          "highest_m_s",
          "u95_pct",
          "u95_word",
          "due",
          "due_cause",
          "jar",
          "jar_at",
          "jar_verdict",
          "jar_drift_pct",
          "clock_ends",
          "waivers");

  private static final int BAND_LETTERS = 30;

  private final Messages words;

  public BenchText(Messages words) {
    this.words = words;
  }

  /** A paragraph an instrument: what it needs, then what is known of it. */
  public List<String> lines(List<BenchRow> rows) {
    List<String> lines = new ArrayList<>();
    for (BenchRow row : rows) {
      lines.add(words.text("bench-list.head", row.nameAmong(rows), need(row)));
      for (String line : known(row)) {
        lines.add("  " + line);
      }
      row.inForce().flatMap(InForce::range).map(this::band).ifPresent(b -> lines.add("  " + b));
    }
    return lines;
  }

  /** What an instrument needs, in a word, and where. */
  public String need(BenchRow row) {
    String kind = kind(row);
    return row.need().step().isEmpty()
        ? kind
        : words.text("bench-list.at", kind, row.need().stage(), row.need().step());
  }

  /** What an instrument needs, in a word. */
  public String kind(BenchRow row) {
    return words.text("bench-list.need." + word(row.need().kind()));
  }

  /** Sentences about it: what stands in the way, clocks, calibration, jar check, waivers. */
  List<String> known(BenchRow row) {
    List<String> lines = new ArrayList<>();
    if (!row.need().reason().isEmpty()) {
      lines.add(row.need().reason());
    }
    for (BenchRow.Clock clock : row.clocks()) {
      lines.add(
          words.text("bench-list.clock", clock.label(), DateText.minute(words, clock.ends())));
    }
    row.inForce().map(this::calibration).ifPresent(lines::add);
    row.jar().map(this::jar).ifPresent(lines::add);
    if (row.waivers() > 0) {
      lines.add(words.text("bench-list.waivers", row.waivers()));
    }
    return lines;
  }

  private String calibration(InForce inForce) {
    String due =
        words.text(
            inForce.past() ? "bench-list.due-since" : "bench-list.due",
            DateText.day(words, inForce.due().at()),
            words.text(inForce.due().cause().key()));
    return inForce
        .range()
        .map(
            range ->
                words.text(
                    "bench-list.calibration",
                    Numerals.digits(range.lowest_m_s(), 2),
                    Numerals.digits(range.highest_m_s(), 2),
                    Numerals.digits(100 * range.u95Share(), 2),
                    due,
                    words.text(range.grade().key())))
        .orElseGet(() -> words.text("bench-list.calibration-unread", inForce.file(), due));
  }

  /** The calibrated speeds in brief, with the uncertainty in a word. */
  public String brief(BenchRow.Range range) {
    return words.text(
        "bench-list.brief",
        Numerals.digits(range.lowest_m_s(), 2),
        Numerals.digits(range.highest_m_s(), 2),
        words.text(range.grade().key()),
        Numerals.digits(100 * range.u95Share(), 2));
  }

  /** The calibrated speeds as a row of letters between 0.01 and 10 m/s, logarithmic. */
  private String band(BenchRow.Range range) {
    int from = (int) Math.min(BAND_LETTERS - 1, Math.round(BAND_LETTERS * range.from()));
    int to = (int) Math.max(from + 1, Math.round(BAND_LETTERS * range.to()));
    return words.text(
        "bench-list.letters",
        ".".repeat(from) + "#".repeat(to - from) + ".".repeat(BAND_LETTERS - to));
  }

  /** The last jar check with what has changed since the calibration. */
  public String jar(BenchRow.JarLevel jar) {
    String day = DateText.day(words, jar.at());
    return jar.drift()
        .map(
            drift ->
                words.text(
                    "bench-list.jar-drift", jar.amount(), day, Numerals.signed(100 * drift, 1)))
        .orElseGet(() -> words.text("bench-list.jar", jar.amount(), day));
  }

  /** A row an instrument; people's text cannot become a formula of a spreadsheet. */
  public String csv(List<BenchRow> rows) {
    StringBuilder text = new StringBuilder(String.join(",", COLUMNS)).append('\n');
    for (BenchRow row : rows) {
      String line = cells(row).stream().map(RowText::harmless).collect(Collectors.joining(","));
      text.append(line).append('\n');
    }
    return text.toString();
  }

  private static List<String> cells(BenchRow row) {
    List<String> cells = new ArrayList<>();
    cells.add(String.valueOf(row.folder().getFileName()));
    cells.add(row.name());
    cells.add(word(row.need().kind()));
    cells.add(row.need().stage());
    cells.add(row.need().step());
    cells.add(row.need().reason());
    Optional<InForce> inForce = row.inForce();
    Optional<BenchRow.Range> range = inForce.flatMap(InForce::range);
    cells.add(inForce.map(f -> f.file()).orElse(""));
    cells.add(range.map(r -> Numerals.digits(r.lowest_m_s(), 4)).orElse(""));
    cells.add(range.map(r -> Numerals.digits(r.highest_m_s(), 4)).orElse(""));
    cells.add(range.map(r -> Numerals.digits(100 * r.u95Share(), 3)).orElse(""));
    cells.add(range.map(r -> r.grade().name().toLowerCase(Locale.ROOT)).orElse(""));
    cells.add(inForce.map(f -> String.valueOf(f.due().at().toLocalDate())).orElse(""));
    cells.add(inForce.map(f -> f.due().cause().name().toLowerCase(Locale.ROOT)).orElse(""));
    Optional<BenchRow.JarLevel> jar = row.jar();
    cells.add(jar.map(j -> plain(j.amount())).orElse(""));
    cells.add(jar.map(j -> String.valueOf(j.at())).orElse(""));
    cells.add(
        jar.flatMap(BenchRow.JarLevel::verdict)
            .map(ReadingVerdict::name)
            .map(name -> name.toLowerCase(Locale.ROOT))
            .orElse(""));
    cells.add(
        jar.flatMap(BenchRow.JarLevel::drift).map(d -> Numerals.places(100 * d, 2)).orElse(""));
    cells.add(
        row.clocks().stream().map(c -> String.valueOf(c.ends())).min(String::compareTo).orElse(""));
    cells.add(String.valueOf(row.waivers()));
    return cells;
  }

  /** For another program. */
  public String json(Path folder, List<BenchRow> rows) {
    List<RowForm> told = rows.stream().map(RowForm::of).toList();
    return plain(JsonForm.text(new Told("faintwind-list/1", folder.toString(), told)));
  }

  private record Told(String format, String folder, List<RowForm> instruments) {}

  /** Without the space that keeps number and unit on one line. */
  private static String plain(String amount) {
    return amount.replace('\u00a0', ' ');
  }

  static String word(BenchRow.Kind kind) {
    return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
