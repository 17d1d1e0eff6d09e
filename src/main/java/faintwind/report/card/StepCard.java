package faintwind.report.card;

import faintwind.report.picture.Picture;
import java.util.List;

/**
 * What stands on a card.
 *
 * @param title what it is
 * @param drawings from the user's own dimensions
 * @param rows one number a row
 * @param remarks sentences below
 */
public record StepCard(String title, List<Picture> drawings, List<Row> rows, List<String> remarks) {
  public StepCard {
    drawings = List.copyOf(drawings);
    rows = List.copyOf(rows);
    remarks = List.copyOf(remarks);
  }

  /**
   * One row.
   *
   * @param what the quantity
   * @param value with its unit
   * @param why equation, rule or source; may be empty
   */
  public record Row(String what, String value, String why) {}
}
