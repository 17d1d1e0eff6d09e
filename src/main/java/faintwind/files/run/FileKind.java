package faintwind.files.run;

import faintwind.files.TextLines;
import faintwind.files.table.TableSource;
import faintwind.message.Checked;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** What a file seems to be, by its name and its first bytes. */
public enum FileKind {
  ARM,
  CALIBRATION,
  CHAIN,
  DESIGN,
  INSTRUMENT,
  PLAN,
  PROFILE,
  RUNS_TABLE,
  RUN_FILE,
  UNKNOWN;

  private static final String JOURNAL = "journal.jsonl";

  /** A folder whose journal was taken away still has it. */
  private static final String SUMMARY = "instrument.json";

  private static final int LOOKED_AT_BYTES = 4096;
  private static final Pattern CHAIN_KEY = Pattern.compile("\"(input|gain|sign)\"");
  private static final Pattern TABLE_COLUMN =
      Pattern.compile("(^|[,;\t])\\s*(run|kind|radius_mm|turns_time_s|spin_start_s)\\s*([,;\t]|$)");

  private static final Pattern TABLES = Pattern.compile("\\.(csv|xlsx?|ods)$");

  /** The word in bundle keys. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The kind; a file that could be anything is taken by its ending. */
  public static FileKind of(Path path) throws IOException {
    if (Files.isDirectory(path)) {
      boolean instrument =
          Files.exists(path.resolve(JOURNAL)) || Files.exists(path.resolve(SUMMARY));
      return instrument ? INSTRUMENT : UNKNOWN;
    }
    if (Files.exists(path) && !Files.isRegularFile(path)) {
      return UNKNOWN; // a pipe would be waited for
    }
    String name = String.valueOf(path.getFileName()).toLowerCase(Locale.ROOT);
    if (name.equals(ChainFile.NAME)) {
      return CHAIN;
    }
    String head = head(path);
    if (name.endsWith(".json")) {
      return json(head);
    }
    String row = firstRow(head);
    if (name.equals("runs.csv") || TABLE_COLUMN.matcher(row).find()) {
      return RUNS_TABLE;
    }
    return TABLES.matcher(name).find() || row.contains(LogColumns.TIME) ? RUN_FILE : UNKNOWN;
  }

  private static FileKind json(String head) {
    for (FileKind kind : List.of(ARM, DESIGN, PROFILE, PLAN)) {
      if (head.contains("\"faintwind-" + kind.word() + "/")) {
        return kind;
      }
    }
    boolean chain = !head.contains("\"format\"") && CHAIN_KEY.matcher(head).find();
    return chain ? CHAIN : CALIBRATION;
  }

  private static String firstRow(String head) {
    return head.lines().filter(line -> !line.startsWith("#")).findFirst().orElse("");
  }

  private static String head(Path path) throws IOException {
    Checked<TableSource> opened = TableSource.open(Files.newInputStream(path), path.toString());
    if (!(opened instanceof Checked.Ok<TableSource> ok)) {
      return "";
    }
    try (InputStream in = ok.value().in()) {
      byte[] bytes = in.readNBytes(LOOKED_AT_BYTES);
      return TextLines.decoded(bytes, 0, bytes.length).replace("\uFEFF", "");
    }
  }
}
