package faintwind.report.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import faintwind.Main;
import faintwind.calibration.Calibration;
import faintwind.calibration.complete.CompleteFormula;
import faintwind.job.formula.OpenCalibration;
import faintwind.message.Messages;
import faintwind.terminal.Terminal;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The workbook, with its formulas worked out. */
class SheetExportTest {
  private static final Path DEMO = Path.of("demo-projects/cellar");
  private static final Path CALIBRATION = DEMO.resolve("calibrations/2026-09-13.json");
  private static final Path STEPS = DEMO.resolve("runs/first-session/session.csv");

  private static final Path DAY = DEMO.resolve("logs/north-shelf-day.csv");

  @TempDir Path folder;

  @Test
  void formulasMeetTheTestVectorsAndThereIsAChart() throws IOException {
    try (XSSFWorkbook book = book(CALIBRATION, 5)) {
      FormulaEvaluator evaluator = book.getCreationHelper().createFormulaEvaluator();
      assertThat(book.getSheet("Log").getDrawingPatriarch().getCharts()).hasSize(1);
      XSSFSheet check = book.getSheet("Check");
      assertThat(check.getLastRowNum()).isEqualTo(20);
      for (int i = 1; i <= 20; i++) {
        double off = evaluator.evaluate(check.getRow(i).getCell(7)).getNumberValue();
        assertThat(Math.abs(off)).as("vector " + i).isLessThan(1e-5);
      }
    }
  }

  @Test
  void theFilterMeetsConvertFromTheFirstRow() throws IOException {
    Differences quick = compare(STEPS, 5700, 40);
    assertThat(quick.relative()).hasSizeGreaterThan(10);
    assertThat(quick.largest()).isLessThan(1e-4);
    assertThat(quick.otherFlags()).isZero();
  }

  @Tag("long")
  @Test
  void theFilterMeetsConvertInSteps() throws IOException {
    Differences steps = compare(STEPS, 5500, 400);
    assertThat(steps.relative()).hasSizeGreaterThan(200);
    assertThat(steps.median()).isLessThan(1e-4);
    assertThat(steps.largest()).isLessThan(1e-3);
    assertThat(steps.otherFlags()).isZero();
  }

  @Tag("long")
  @Test
  void theFilterMeetsConvertOnADayOfFaintDraughts() throws IOException {
    Differences day = compare(DAY, 3000, 400);
    assertThat(day.relative()).hasSizeGreaterThan(200);
    assertThat(day.median()).isLessThan(1e-4);
    assertThat(day.relative().get(day.relative().size() * 98 / 100)).isLessThan(1e-3);
    assertThat(day.otherFlags()).isZero();
  }

  @Tag("slow")
  @Test
  void anOfficeProgramWorksOutTheSame() throws Exception {
    assumeTrue(Files.isExecutable(Path.of("/usr/bin/soffice")), "soffice is not installed");
    List<String> log = part(STEPS, 5500, 400);
    List<String> converted = stream(log);
    Path pasted = folder.resolve("pasted.xlsx");
    try (XSSFWorkbook book = book(CALIBRATION, 400);
        OutputStream out = Files.newOutputStream(pasted)) {
      paste(book.getSheet("Log"), log);
      book.write(out);
    }
    String sheet = "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,false,false,false,2";
    List<String> command = List.of("soffice", "--headless", "--convert-to", sheet, "pasted.xlsx");
    Process process = new ProcessBuilder(command).directory(folder.toFile()).start();
    assertThat(process.waitFor(5, TimeUnit.MINUTES)).isTrue();
    List<String> worked = Files.readAllLines(folder.resolve("pasted-Log.csv"));
    List<Double> relative = new ArrayList<>();
    for (int i = 20; i < 400; i++) {
      String[] theirs = converted.get(i).split(",", -1);
      if (theirs[6].isEmpty()) {
        double speed_m_s =
            Double.parseDouble(worked.get(2 + i).split(",", -1)[4].replace("\"", ""));
        relative.add(Math.abs(speed_m_s / Double.parseDouble(theirs[4]) - 1));
      }
    }
    relative.sort(null);
    assertThat(relative).hasSizeGreaterThan(200);
    assertThat(relative.get(relative.size() / 2)).isLessThan(1e-3);
    assertThat(relative.get(relative.size() - 1)).isLessThan(1e-2);
  }

  /** Speeds of rows without a flag after the first minute against those of convert. */
  private record Differences(List<Double> relative, int otherFlags) {
    double median() {
      return relative.get(relative.size() / 2);
    }

    double largest() {
      return relative.get(relative.size() - 1);
    }
  }

  private Differences compare(Path source, int from, int rows) throws IOException {
    List<String> log = part(source, from, rows);
    List<String> converted = stream(log);
    List<Double> relative = new ArrayList<>();
    int otherFlags = 0;
    try (XSSFWorkbook book = book(CALIBRATION, rows)) {
      paste(book.getSheet("Log"), log);
      FormulaEvaluator evaluator = book.getCreationHelper().createFormulaEvaluator();
      for (int i = 0; i < rows; i++) {
        Row row = book.getSheet("Log").getRow(2 + i);
        book.getSheet("Filter").getRow(2 + i).forEach(evaluator::evaluate);
        String[] theirs = converted.get(i).split(",", -1);
        CellValue speed = evaluator.evaluate(row.getCell(4));
        String flag = evaluator.evaluate(row.getCell(6)).getStringValue();
        double speed_m_s = Double.parseDouble(theirs[4]);
        otherFlags += flag.equals(theirs[6]) ? 0 : 1;
        if (theirs[6].isEmpty() && i > rows / 20) {
          assertThat(evaluator.evaluate(row.getCell(5)).getNumberValue()).isPositive();
          relative.add(Math.abs(speed.getNumberValue() / speed_m_s - 1));
        }
      }
    }
    relative.sort(null);
    return new Differences(relative, otherFlags);
  }

  private static List<String> part(Path source, int from, int rows) throws IOException {
    List<String> lines =
        Files.readAllLines(source).stream().filter(line -> !line.startsWith("#")).toList();
    List<String> part = new ArrayList<>(lines.subList(0, 1));
    part.addAll(lines.subList(from, from + rows));
    return part;
  }

  private static void paste(XSSFSheet sheet, List<String> log) {
    for (int i = 1; i < log.size(); i++) {
      String[] cells = log.get(i).split(",", -1);
      for (int j = 0; j < 4; j++) {
        if (!cells[j].isEmpty()) {
          sheet.getRow(1 + i).createCell(j).setCellValue(Double.parseDouble(cells[j]));
        }
      }
    }
  }

  /** What convert makes of the rows as a stream, without the head. */
  private static List<String> stream(List<String> log) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    byte[] bytes = String.join("\n", log).getBytes(StandardCharsets.UTF_8);
    Terminal terminal =
        Terminal.of(
            new ByteArrayInputStream(bytes),
            out,
            OutputStream.nullOutputStream(),
            Messages.of(Locale.ENGLISH));
    String calibration = CALIBRATION.toString();
    assertThat(Main.run(terminal, "convert", calibration, "-", "--out", "-", "--average-s", "0"))
        .isZero();
    return out.toString(StandardCharsets.UTF_8)
        .lines()
        .filter(line -> !line.startsWith("#"))
        .skip(1)
        .toList();
  }

  private static XSSFWorkbook book(Path file, int rows) throws IOException {
    Calibration calibration = OpenCalibration.read(file).fold((ok, notes) -> ok, p -> null);
    ExportedFormula exported =
        new ExportedFormula(
            calibration, CompleteFormula.of(calibration), "c.json", "0", LocalDate.EPOCH);
    List<String> filter = Files.readAllLines(Path.of("assets/export/faintwind_sheet.txt"));
    byte[] bytes = new SheetExport(exported, Messages.of(Locale.ENGLISH), filter, rows).bytes();
    return new XSSFWorkbook(new ByteArrayInputStream(bytes));
  }

  @Test
  void peoplesTextStaysText() throws IOException {
    Path named = folder.resolve("named.json");
    String text = Files.readString(CALIBRATION);
    Files.writeString(
        named,
        text.replaceFirst(
            "\"instrument_id\" : \"[^\"]*\"", "\"instrument_id\" : \"=HYPERLINK(\\\\\"x\\\\\")\""));
    try (XSSFWorkbook book = book(named, 5)) {
      for (Row row : book.getSheet("Read me")) {
        assertThat(row.getCell(0).getCellType()).isEqualTo(CellType.STRING);
        assertThat(row.getCell(0).getCellStyle().getQuotePrefixed()).isTrue();
      }
      assertThat(book.getSheet("Read me").getRow(0).getCell(0).getStringCellValue())
          .contains("=HYPERLINK('x')");
    }
  }
}
