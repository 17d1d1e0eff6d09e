package faintwind.report.export;

import faintwind.calibration.Calibration;
import faintwind.calibration.Parameter;
import faintwind.calibration.complete.TestVector;
import faintwind.message.Messages;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.ScatterStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFScatterChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * The formula as a workbook with live formulas: a log is pasted into the first four columns, a
 * straight line through the rows about each gives signal and rate, and the typed formulas follow
 * column by column to the speed; with the calibration's numbers, a check, and a chart.
 */
public final class SheetExport {
  private static final int ROWS = 1000;
  private static final int HEAD = 2;
  private static final int INPUTS = 4;
  private static final double WINDOW_S = 60;
  private static final String LOG = "Log";
  private static final String NUMBERS = "Calibration";
  private static final List<String> RESULTS = List.of("speed_m_s", "u95_m_s", "flag");

  private final ExportedFormula exported;
  private final Messages messages;
  private final XSSFWorkbook book = new XSSFWorkbook();
  private final Map<String, Double> named = new LinkedHashMap<>();
  private final Map<String, String> units = new LinkedHashMap<>();

  public SheetExport(ExportedFormula exported, Messages messages) {
    this.exported = exported;
    this.messages = messages;
  }

  /** The whole file. To be asked once. */
  public byte[] bytes() throws IOException {
    try (book) {
      gather();
      XSSFSheet about = book.createSheet("Read me");
      XSSFSheet log = book.createSheet(LOG);
      about(about);
      numbers(book.createSheet(NUMBERS));
      log(log);
      check(book.createSheet("Check"));
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      book.write(bytes);
      return bytes.toByteArray();
    }
  }

  private void gather() {
    exported
        .complete()
        .constants()
        .forEach((name, constant) -> put(name, constant.value(), constant.unit()));
    for (Parameter parameter : exported.calibration().formula().parameters()) {
      put(parameter.name(), parameter.value(), parameter.unit());
    }
    Calibration calibration = exported.calibration();
    put("floor_m_s", calibration.performance().floor_m_s(), "m/s");
    put("top_m_s", calibration.coverage().highest_m_s(), "m/s");
    ExportNumbers all = new ExportNumbers(exported);
    for (String name : List.of("air_C", "pressure_hPa", "rh_pct", "still_delta_K", "warm_share")) {
      put(name, all.all().getOrDefault(name, 0.0), "");
    }
    double step_s = Math.max(0.1, calibration.performance().rowStep_s());
    put("rows_each_side", Math.max(2, Math.rint(WINDOW_S / 2 / step_s)), "rows");
  }

  private void put(String name, double value, String unit) {
    named.put(name, value);
    units.put(name, unit.equals("1") ? "" : unit);
  }

  private void about(XSSFSheet sheet) {
    int row = 0;
    for (String line : ExportHead.lines(exported, messages)) {
      text(sheet.createRow(row++).createCell(0), line);
    }
    for (String key : List.of("export.sheet-use", "export.sheet-window", "export.sheet-error")) {
      text(sheet.createRow(++row).createCell(0), messages.text(key));
    }
    sheet.setColumnWidth(0, 140 * 256);
  }

  /** Text that stays text, whatever it begins with. */
  private void text(Cell cell, String text) {
    CellStyle style = book.createCellStyle();
    style.setQuotePrefixed(true);
    style.setWrapText(true);
    cell.setCellStyle(style);
    cell.setCellValue(text);
  }

  private void numbers(XSSFSheet sheet) {
    heading(sheet.createRow(0), List.of("name", "value", "unit"), 0);
    int row = 1;
    for (Map.Entry<String, Double> entry : named.entrySet()) {
      Row line = sheet.createRow(row++);
      line.createCell(0).setCellValue(entry.getKey());
      line.createCell(1).setCellValue(entry.getValue());
      line.createCell(2).setCellValue(units.getOrDefault(entry.getKey(), ""));
      define(SheetChain.name(entry.getKey()), NUMBERS + "!$B$" + row);
    }
    int table = row + 2;
    heading(sheet.createRow(table - 1), List.of("speed_m_s", "u95_m_s"), 0);
    List<RestBand.At> band = RestBand.of(exported);
    for (int i = 0; i < band.size(); i++) {
      Row line = sheet.createRow(table + i);
      line.createCell(0).setCellValue(band.get(i).speed_m_s());
      line.createCell(1).setCellValue(band.get(i).u95_m_s());
    }
    String end = ":$%s$" + (table + band.size());
    define("fw_table_speed", NUMBERS + "!$A$" + (table + 1) + String.format(Locale.ROOT, end, "A"));
    define("fw_table_u95", NUMBERS + "!$B$" + (table + 1) + String.format(Locale.ROOT, end, "B"));
    sheet.setColumnWidth(0, 24 * 256);
    sheet.setColumnWidth(1, 24 * 256);
  }

  private void define(String name, String place) {
    Name defined = book.createName();
    defined.setNameName(name);
    defined.setRefersToFormula(place);
  }

  private void heading(Row row, List<String> words, int first) {
    CellStyle style = book.createCellStyle();
    Font font = book.createFont();
    font.setBold(true);
    style.setFont(font);
    for (int i = 0; i < words.size(); i++) {
      Cell cell = row.createCell(first + i);
      cell.setCellValue(words.get(i));
      cell.setCellStyle(style);
    }
  }

  private void log(XSSFSheet sheet) {
    String unit = exported.calibration().signal().unit().column();
    int first = INPUTS + RESULTS.size();
    Map<String, Integer> inputs = new LinkedHashMap<>();
    List<String> smooth = List.of("signal", "rate", "air_C", "pressure_hPa", "rh_pct", "supply_V");
    for (int i = 0; i < smooth.size(); i++) {
      inputs.put(smooth.get(i), first + i);
    }
    SheetChain chain =
        new SheetChain(
            exported.complete().relations().speed(), inputs, named.keySet(), first + smooth.size());
    heading(sheet.createRow(HEAD - 1), List.of("time_s", unit, "air_C", "supply_V"), 0);
    heading(sheet.getRow(HEAD - 1), RESULTS, INPUTS);
    heading(sheet.getRow(HEAD - 1), smooth.stream().map(name -> name + " used").toList(), first);
    heading(
        sheet.getRow(HEAD - 1),
        chain.columns().stream().map(SheetChain.Column::heading).toList(),
        first + smooth.size());
    text(sheet.createRow(0).createCell(0), messages.text("export.sheet-log"));
    for (int i = 0; i < ROWS; i++) {
      row(sheet.createRow(HEAD + i), chain, first);
    }
    sheet.createFreezePane(INPUTS + RESULTS.size(), HEAD);
    chart(sheet);
  }

  private void row(Row row, SheetChain chain, int first) {
    int at = row.getRowNum() + 1;
    String own = "$A" + at + "=\"\"";
    for (int i = 0; i < 2; i++) {
      row.createCell(first + i).setCellFormula(line(i == 0 ? "INTERCEPT" : "SLOPE", at));
    }
    String[] plain = {
      "IF($C%d=\"\",fw_air_C,$C%d)",
      "fw_pressure_hPa",
      "fw_rh_pct",
      "IF($D%d=\"\",fw_nominal_supply_V,$D%d)"
    };
    for (int i = 0; i < plain.length; i++) {
      row.createCell(first + 2 + i).setCellFormula(String.format(Locale.ROOT, plain[i], at, at));
    }
    int column = first + 2 + plain.length;
    for (SheetChain.Column each : chain.columns()) {
      row.createCell(column++).setCellFormula(SheetChain.at(each.formula(), at));
    }
    String speed = "$" + SheetChain.letters(chain.column("speed_m_s")) + at;
    String delta = "$" + SheetChain.letters(chain.column("delta_K")) + at;
    row.createCell(INPUTS)
        .setCellFormula(
            "IF(" + own + ",\"\",IFERROR(IF(" + speed + "<1E-9,0," + speed + "),\"\"))");
    row.createCell(INPUTS + 1)
        .setCellFormula(
            String.format(Locale.ROOT, "IFERROR(IF($E%d=\"\",\"\",%s),\"\")", at, band("$E" + at)));
    row.createCell(INPUTS + 2)
        .setCellFormula(
            String.format(
                Locale.ROOT,
                "IF($E%d=\"\",\"\",IF(%s<fw_warm_share*fw_still_delta_K,\"warmup\","
                    + "IF($E%d<fw_floor_m_s,\"floor\",IF($E%d>fw_top_m_s,\"above\",\"\"))))",
                at,
                delta,
                at,
                at));
  }

  /** Value or slope at a row of the straight line through the rows about it. */
  private static String line(String function, int at) {
    if (at <= HEAD + 2) {
      return "NA()";
    }
    String rows = "MIN(ROW()-" + (HEAD + 1) + ",fw_rows_each_side)";
    String about = "OFFSET($%s" + at + ",-" + rows + ",0,2*" + rows + "+1,1)";
    String times = String.format(Locale.ROOT, about, "A");
    String signals = String.format(Locale.ROOT, about, "B");
    return function.equals("SLOPE")
        ? "SLOPE(" + signals + "," + times + ")"
        : "FORECAST($A" + at + "," + signals + "," + times + ")";
  }

  /** The table's expanded uncertainty at a speed, by a straight line between its rows. */
  private static String band(String speed) {
    String row = "MATCH(MAX(" + speed + ",INDEX(fw_table_speed,1)),fw_table_speed,1)";
    String low = "INDEX(fw_table_speed," + row + ")";
    String high = "INDEX(fw_table_speed," + row + "+1)";
    String share =
        "((MAX(" + speed + ",INDEX(fw_table_speed,1))-" + low + ")/(" + high + "-" + low + "))";
    String uLow = "INDEX(fw_table_u95," + row + ")";
    return uLow + "+" + share + "*(INDEX(fw_table_u95," + row + "+1)-" + uLow + ")";
  }

  private void check(XSSFSheet sheet) {
    List<String> inputs = List.of("signal", "rate", "air_C", "pressure_hPa", "rh_pct", "supply_V");
    Map<String, Integer> places = new LinkedHashMap<>();
    inputs.forEach(input -> places.put(input, places.size()));
    int first = inputs.size() + 2;
    SheetChain chain =
        new SheetChain(exported.complete().relations().speed(), places, named.keySet(), first);
    heading(sheet.createRow(0), inputs, 0);
    heading(sheet.getRow(0), List.of("speed_m_s of the file", "difference"), inputs.size());
    heading(
        sheet.getRow(0), chain.columns().stream().map(SheetChain.Column::heading).toList(), first);
    int at = 1;
    double nominal_V = named.getOrDefault("nominal_supply_V", 1.0);
    for (TestVector v : exported.complete().testVectors()) {
      Row row = sheet.createRow(at++);
      double supply_V = v.supply_V().orElse(nominal_V);
      double[] values = {
        v.signal(), v.rate(), v.air_C(), v.pressure_hPa(), v.rh_pct(), supply_V, v.speed_m_s()
      };
      for (int i = 0; i < values.length; i++) {
        row.createCell(i).setCellValue(values[i]);
      }
      for (int i = 0; i < chain.columns().size(); i++) {
        row.createCell(first + i)
            .setCellFormula(SheetChain.at(chain.columns().get(i).formula(), at));
      }
      String speed = SheetChain.letters(chain.column("speed_m_s")) + at;
      row.createCell(inputs.size() + 1).setCellFormula(speed + "/G" + at + "-1");
    }
  }

  private static void chart(XSSFSheet sheet) {
    XSSFClientAnchor place = new XSSFClientAnchor(0, 0, 0, 0, 8, 3, 20, 28);
    XSSFChart chart = sheet.createDrawingPatriarch().createChart(place);
    chart.setTitleText("speed_m_s");
    XDDFValueAxis time = chart.createValueAxis(AxisPosition.BOTTOM);
    time.setTitle("time_s");
    XDDFValueAxis speed = chart.createValueAxis(AxisPosition.LEFT);
    speed.setTitle("m/s");
    XDDFScatterChartData data =
        (XDDFScatterChartData) chart.createData(ChartTypes.SCATTER, time, speed);
    data.setStyle(ScatterStyle.LINE);
    XDDFScatterChartData.Series line =
        (XDDFScatterChartData.Series)
            data.addSeries(
                XDDFDataSourcesFactory.fromNumericCellRange(sheet, column(0)),
                XDDFDataSourcesFactory.fromNumericCellRange(sheet, column(INPUTS)));
    line.setTitle("speed_m_s", new CellReference(LOG, HEAD - 1, INPUTS, true, true));
    line.setMarkerStyle(MarkerStyle.NONE);
    chart.plot(data);
  }

  private static CellRangeAddress column(int column) {
    return new CellRangeAddress(HEAD, HEAD + ROWS - 1, column, column);
  }
}
