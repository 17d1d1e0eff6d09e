package faintwind.files.table;

import faintwind.message.Problem;
import faintwind.message.Where;
import java.util.List;

/** Says which sheet of several was read. */
final class SheetNames {
  private SheetNames() {}

  static List<Problem> notes(List<String> names, String file) {
    return names.size() < 2
        ? List.of()
        : List.of(
            Problem.warning(
                "table.first-sheet", Where.file(file), names.get(0), String.join(", ", names)));
  }
}
