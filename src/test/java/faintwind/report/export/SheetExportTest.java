package faintwind.report.export;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.Main;
import faintwind.message.Messages;
import faintwind.terminal.Terminal;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The workbook, with its formulas worked out. */
class SheetExportTest {
  private static final Path DEMO = Path.of("demo-projects/cellar");
  private static final Path CALIBRATION = DEMO.resolve("calibrations/2026-09-13.json");
  private static final Path STEPS = DEMO.resolve("runs/first-session/session.csv");

  /** Rows with the arm turning and at rest, past the warm-up. */
  private static final int FROM = 5200;

  private static final int ROWS = 1000;

  @TempDir Path folder;

  @Test
  void formulasMeetTheTestVectorsAndThereIsAChart() throws IOException {
    try (XSSFWorkbook book = book()) {
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
  void aLogThatIsPastedGivesWhatConvertGives() throws IOException {
    List<String> lines = Files.readAllLines(STEPS);
    List<String> log = new ArrayList<>(lines.subList(0, 3));
    log.addAll(lines.subList(FROM, FROM + ROWS));
    Path file = Files.write(folder.resolve("log.csv"), log);
    Path speeds = folder.resolve("speeds.csv");
    run(
        "convert",
        CALIBRATION.toString(),
        file.toString(),
        "--out",
        speeds.toString(),
        "--average-s",
        "60");
    List<String> converted = Files.readAllLines(speeds);
    List<Double> differences = new ArrayList<>();
    try (XSSFWorkbook book = book()) {
      XSSFSheet sheet = book.getSheet("Log");
      for (int i = 0; i < ROWS; i++) {
        String[] cells = log.get(3 + i).split(",", -1);
        Row row = sheet.getRow(2 + i);
        for (int j = 0; j < 4; j++) {
          row.createCell(j).setCellValue(Double.parseDouble(cells[j]));
        }
      }
      FormulaEvaluator evaluator = book.getCreationHelper().createFormulaEvaluator();
      for (int i = 100; i < ROWS - 100; i += 8) {
        String[] theirs = converted.get(3 + i - (log.size() - converted.size())).split(",", -1);
        double speed_m_s = Double.parseDouble(theirs[4]);
        if (theirs[6].isEmpty() && speed_m_s > 0.1) {
          Row row = sheet.getRow(2 + i);
          double read_m_s = evaluator.evaluate(row.getCell(4)).getNumberValue();
          assertThat(evaluator.evaluate(row.getCell(5)).getNumberValue()).isPositive();
          differences.add(Math.abs(read_m_s / speed_m_s - 1));
        }
      }
    }
    assertThat(differences).hasSizeGreaterThan(40);
    differences.sort(null);
    assertThat(differences.get(differences.size() / 2)).isLessThan(0.01);
  }

  @Test
  void peoplesTextStaysText() throws IOException {
    Path named = folder.resolve("named.json");
    String text = Files.readString(CALIBRATION);
    Files.writeString(
        named,
        text.replaceFirst(
            "\"instrument_id\" : \"[^\"]*\"", "\"instrument_id\" : \"=HYPERLINK(\\\\\"x\\\\\")\""));
    try (XSSFWorkbook book = book(named)) {
      for (Row row : book.getSheet("Read me")) {
        assertThat(row.getCell(0).getCellType()).isEqualTo(CellType.STRING);
        assertThat(row.getCell(0).getCellStyle().getQuotePrefixed()).isTrue();
      }
      assertThat(book.getSheet("Read me").getRow(0).getCell(0).getStringCellValue())
          .contains("=HYPERLINK('x')");
    }
  }

  private XSSFWorkbook book() throws IOException {
    return book(CALIBRATION);
  }

  private XSSFWorkbook book(Path calibration) throws IOException {
    Path target = folder.resolve("air.xlsx");
    run("export", calibration.toString(), "--as", "xlsx", "--out", target.toString());
    try (InputStream in = Files.newInputStream(target)) {
      return new XSSFWorkbook(in);
    }
  }

  private static void run(String... arguments) {
    Terminal terminal =
        Terminal.of(
            InputStream.nullInputStream(),
            OutputStream.nullOutputStream(),
            OutputStream.nullOutputStream(),
            Messages.of(Locale.ENGLISH));
    assertThat(Main.run(terminal, arguments)).isZero();
  }
}
