package faintwind.report.export;

import faintwind.calibration.Parameter;
import faintwind.calibration.complete.CompleteFormula;
import faintwind.calibration.complete.TestVector;
import faintwind.message.Messages;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.ScatterStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFScatterChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * The formula as a workbook with live formulas: a log is pasted into the first four columns; the
 * live filter gives the speed on a sheet of its own, and beside it a straight line through the rows
 * about each with the typed formulas column by column; with the calibration's numbers, a check, and
 * a chart.
 */
public final class SheetExport {
  private static final double LINE_S = 60;
  private static final int STREAMED = 20;
  private static final String FILTER = "Filter";
  private static final String NUMBERS = "Calibration";

  private final ExportedFormula exported;
  private final Messages messages;
  private final List<String> filter;
  private final int rows;
  private final XSSFWorkbook book = new XSSFWorkbook();
  private final Map<String, Double> named = new LinkedHashMap<>();
  private final Map<String, String> units = new LinkedHashMap<>();

  /**
   * The workbook.
   *
   * @param filter lines of the filter's template
   * @param rows rows that are filled in; more by filling the last one down
   */
  public SheetExport(ExportedFormula exported, Messages messages, List<String> filter, int rows) {
    this.exported = exported;
    this.messages = messages;
    this.filter = List.copyOf(filter);
    this.rows = rows;
  }

  /** The whole file. To be asked once. */
  public byte[] bytes() throws IOException {
    try (book;
        SXSSFWorkbook streamed = new SXSSFWorkbook(book, STREAMED)) {
      gather();
      about(book.createSheet("Read me"));
      XSSFSheet log = book.createSheet(LogSheet.NAME);
      numbers(book.createSheet(NUMBERS));
      check(book.createSheet("Check"));
      Sheet filtered = streamed.createSheet(FILTER);
      FilterColumns columns = columns();
      log(log, columns);
      filter(filtered, columns);
      book.setForceFormulaRecalculation(true);
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      streamed.write(bytes);
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
    Map<String, Double> all = new ExportNumbers(exported).all();
    all.forEach((name, value) -> named.putIfAbsent(name, value));
    forFilter(all);
    double step_s = Math.max(0.1, exported.calibration().performance().rowStep_s());
    put("rows_each_side", Math.max(2, Math.rint(LINE_S / 2 / step_s)), "rows");
  }

  /** Numbers that the filter's columns name, put together from others. */
  private void forFilter(Map<String, Double> all) {
    ToDoubleFunction<String> of = name -> all.getOrDefault(name, 0.0);
    double ball = 1 / (1 - of.applyAsDouble("heater_share"));
    double heater = 1 / of.applyAsDouble("heater_lag");
    boolean hasSupply = of.applyAsDouble("has_supply") > 0;
    double nominal_V = hasSupply ? of.applyAsDouble("nominal_supply_V") : 1;
    put("nominal_supply_V", nominal_V, "V");
    double share = of.applyAsDouble("supply_off_share");
    put("off_V", hasSupply ? share * nominal_V : of.applyAsDouble("supply_off_V"), "V");
    put("bead_rate", 1 / of.applyAsDouble("bead_lag"), "1/s");
    double lag_s = Math.min(of.applyAsDouble("bead_lag"), of.applyAsDouble("heater_lag"));
    put("longest_s", Math.min(of.applyAsDouble("longest_step_s"), lag_s), "s");
    put("b", ball, "1");
    put("g", heater, "1/s");
    put("c", of.applyAsDouble("heater_share") * heater, "1/s");
    put("cb", of.applyAsDouble("heater_share") * heater * ball, "1/s");
    double noise = of.applyAsDouble("noise");
    put("noise_bound", noise > 0 ? of.applyAsDouble("noise_trust") * noise : 1e9, "");
    double least = of.applyAsDouble("noise_least_share") * of.applyAsDouble("still_signal");
    put("least_noise2", least * least, "");
  }

  private FilterColumns columns() {
    CompleteFormula.Chains chains = exported.complete().relations();
    return new FilterColumns(
        filter,
        Map.of("speed", chains.speed(), "loss", chains.loss()),
        name -> named.containsKey(name) ? SheetChain.name(name) : name,
        exported.complete().filter().walks_1_sqrt_s(),
        LogSheet.HEAD + 1);
  }

  private void log(XSSFSheet sheet, FilterColumns columns) {
    LogSheet log = new LogSheet(exported, named.keySet(), columns);
    text(sheet.createRow(0).createCell(0), messages.text("export.sheet-log"));
    heading(sheet.createRow(LogSheet.HEAD - 1), log.headings(), 0);
    for (int i = 0; i < rows; i++) {
      log.fill(sheet.createRow(LogSheet.HEAD + i));
    }
    sheet.createFreezePane(LogSheet.FROZEN, LogSheet.HEAD);
    chart(sheet);
  }

  private void filter(Sheet sheet, FilterColumns columns) {
    heading(sheet.createRow(LogSheet.HEAD - 1), columns.headings(), 0);
    for (int i = 0; i < rows; i++) {
      Row row = sheet.createRow(LogSheet.HEAD + i);
      int column = 0;
      for (String formula : columns.row(LogSheet.HEAD + i + 1)) {
        Cell cell = row.createCell(column++);
        cell.setCellFormula(formula);
        cell.setCellValue("");
      }
    }
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

  private void check(XSSFSheet sheet) {
    List<String> inputs = LogSheet.USED;
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

  private void chart(XSSFSheet sheet) {
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
                XDDFDataSourcesFactory.fromNumericCellRange(sheet, column(LogSheet.INPUTS)));
    line.setTitle(
        "speed_m_s",
        new CellReference(LogSheet.NAME, LogSheet.HEAD - 1, LogSheet.INPUTS, true, true));
    line.setMarkerStyle(MarkerStyle.NONE);
    chart.plot(data);
  }

  private CellRangeAddress column(int column) {
    return new CellRangeAddress(LogSheet.HEAD, LogSheet.HEAD + rows - 1, column, column);
  }
}
