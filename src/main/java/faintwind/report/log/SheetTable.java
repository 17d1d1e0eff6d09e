package faintwind.report.log;

import faintwind.message.Numerals;
import faintwind.physics.Interval;
import faintwind.physics.sheet.DesignSheet;
import faintwind.physics.sheet.DesignVerdict;
import faintwind.physics.sheet.Outcome;
import faintwind.physics.sheet.OutcomeId;
import faintwind.report.page.Chapter;
import java.util.List;
import java.util.Locale;

/** Every quantity of a design sheet, group by group. */
final class SheetTable {
  private SheetTable() {}

  static void write(Chapter to, DesignSheet sheet) {
    for (OutcomeId.Group group : OutcomeId.Group.values()) {
      List<List<String>> rows =
          sheet.quantities().stream()
              .filter(q -> q.id().group() == group)
              .map(q -> row(to, q))
              .toList();
      if (!rows.isEmpty()) {
        to.head("quantity-group." + group.name().toLowerCase(Locale.ROOT));
        to.table(
            List.of(
                "build-log.quantity", "build-log.value", "build-log.range", "build-log.verdict"),
            rows);
      }
    }
  }

  private static List<String> row(Chapter to, Outcome outcome) {
    Interval v = outcome.value();
    String unit = outcome.id().unit();
    String range =
        v.low() == v.high()
            ? ""
            : (Numerals.compact(v.low(), 3) + " … " + Numerals.compact(v.high(), 3) + " " + unit)
                .strip();
    String verdict =
        outcome.verdict() == DesignVerdict.PLAIN
            ? ""
            : to.words()
                .text("design-verdict." + outcome.verdict().name().toLowerCase(Locale.ROOT));
    return List.of(
        to.words().text("quantity." + outcome.id().id()),
        (Numerals.compact(v.nominal(), 3) + " " + unit).strip(),
        range,
        verdict);
  }
}
