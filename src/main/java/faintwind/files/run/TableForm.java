package faintwind.files.run;

import faintwind.calibration.profile.LineForm;
import faintwind.files.RowText;
import java.util.regex.Pattern;

/** What stands between the cells of a written table, and in its numbers. */
public enum TableForm {
  /** Commas and decimal points, as docs/formats has it. */
  POINTS,
  /** Semicolons and decimal commas, for a spreadsheet of a place where numbers have them. */
  COMMAS;

  private static final Pattern POINT = Pattern.compile("[-+]?\\d*\\.\\d+([eE][-+]?\\d+)?");

  /** A row of comma-separated cells in this form. */
  String row(String row) {
    if (this == POINTS) {
      return row;
    }
    return String.join(";", LineForm.cells(row, ',').stream().map(TableForm::cell).toList());
  }

  private static String cell(String cell) {
    if (POINT.matcher(cell).matches()) {
      return cell.replace('.', ',');
    }
    return RowText.plainOrQuoted(cell, ';');
  }
}
