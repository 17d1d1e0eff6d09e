package faintwind.report.export;

import faintwind.calibration.complete.TestVector;
import faintwind.message.Messages;
import faintwind.message.Numerals;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The formula with its live filter, uncertainty and flags as one file of C or MicroPython. */
public final class CodeExport {
  private static final Pattern PLACE = Pattern.compile("@(\\w+)@");
  private static final int FLOAT_BYTES = 4;

  private final ExportedFormula exported;
  private final Messages messages;

  public CodeExport(ExportedFormula exported, Messages messages) {
    this.exported = exported;
    this.messages = messages;
  }

  /**
   * As a C99 header with its implementation.
   *
   * @param template text with places named between @ signs
   * @param file name of the file that is written
   */
  public String c(String template, String file) {
    Map<String, String> places = places(Language.C);
    places.put("about", commented(" * "));
    places.put("file", ExportHead.calmed(file));
    StringBuilder functions = new StringBuilder();
    exported.air().forEach(code -> functions.append(code.c("fw_" + code.target())).append('\n'));
    functions.append(exported.bead().c("fw_bead_K")).append('\n');
    functions.append(exported.signal().c("fw_signal")).append('\n');
    functions.append(exported.loss().c("fw_loss_1_s")).append('\n');
    functions.append(exported.speed().c("fw_speed_m_s"));
    places.put("functions", functions.toString());
    places.put(
        "vectors",
        exported.complete().testVectors().stream()
            .map(vector -> "{" + vector(Language.C, vector) + "}")
            .collect(Collectors.joining(",\n                                     ")));
    return filled(template, places);
  }

  /** As a module of MicroPython. */
  public String microPython(String template) {
    Map<String, String> places = places(Language.MICROPYTHON);
    places.put("about", commented("# "));
    StringBuilder functions = new StringBuilder();
    exported.air().forEach(code -> functions.append(code.python(code.target())).append("\n\n"));
    functions.append(exported.bead().python("bead_K")).append("\n\n");
    functions.append(exported.signal().python("signal_of")).append("\n\n");
    functions.append(exported.loss().python("loss_1_s")).append("\n\n");
    functions.append(exported.speed().python("speed_m_s"));
    places.put("functions", functions.toString());
    places.put(
        "vectors",
        exported.complete().testVectors().stream()
            .map(vector -> "(" + vector(Language.MICROPYTHON, vector) + ")")
            .collect(Collectors.joining(",\n    ")));
    return filled(template, places);
  }

  private Map<String, String> places(Language language) {
    Map<String, String> places = new HashMap<>();
    Map<String, Double> settings = exported.complete().filter().settings();
    LossTable table = LossTable.of(exported.calibration());
    List<Double> walks = exported.complete().filter().walks_1_sqrt_s();
    int noiseRows = settings.getOrDefault("noise_rows", 0.0).intValue();
    int stepRows = settings.getOrDefault("step_rows", 0.0).intValue();
    int perWalk = 4 + 16 + 7;
    int floats = walks.size() * perWalk + 19 + 3 * noiseRows + stepRows;
    int integers = 11;
    places.put("walks_count", String.valueOf(walks.size()));
    places.put("noise_rows_count", String.valueOf(noiseRows));
    places.put("step_rows_count", String.valueOf(stepRows));
    places.put("state_bytes", String.valueOf(FLOAT_BYTES * (floats + integers)));
    places.put(
        "table_bytes", String.valueOf(FLOAT_BYTES * (walks.size() + 2 * table.u_loss().size())));
    places.put("float_error", percent(FloatError.of(exported)));
    places.put("unit", exported.calibration().signal().unit().symbol());
    places.put("column", exported.calibration().signal().unit().column());
    places.put("walks", list(language, walks));
    places.put("u_count", String.valueOf(table.u_loss().size()));
    places.put("u_speed", list(language, table.lnSpeeds()));
    places.put("u_loss", list(language, table.u_loss()));
    places.put("constants", new ExportNumbers(exported).definitions(language));
    return places;
  }

  static String percent(double share) {
    return Numerals.compact(100 * share, 2) + " %";
  }

  private String commented(String prefix) {
    return ExportHead.lines(exported, messages).stream()
        .map(line -> prefix + line)
        .collect(Collectors.joining("\n"));
  }

  private String vector(Language language, TestVector v) {
    double nominal_V = exported.numbers().getOrDefault("nominal_supply_V", 1.0);
    return list(
        language,
        List.of(
            v.signal(),
            v.rate(),
            v.air_C(),
            v.pressure_hPa(),
            v.rh_pct(),
            v.supply_V().orElse(nominal_V),
            v.speed_m_s()));
  }

  private static String list(Language language, List<Double> values) {
    return values.stream().map(language::number).collect(Collectors.joining(", "));
  }

  private static String filled(String template, Map<String, String> places) {
    return PLACE
        .matcher(template)
        .replaceAll(
            place -> {
              String text = places.get(place.group(1));
              return Matcher.quoteReplacement(text == null ? place.group() : text);
            });
  }
}
