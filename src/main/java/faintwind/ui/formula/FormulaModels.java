package faintwind.ui.formula;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * The formula models of this window: a fit goes on when one leaves its screen, and whoever comes
 * back finds it, or what came of it. On the JavaFX thread only.
 */
public final class FormulaModels {
  private final Map<Path, FormulaModel> byFolder = new HashMap<>();

  /**
   * The model of an instrument: the one that still holds a fit of its runs, else a fresh one.
   *
   * @param folder the instrument's folder
   * @param runsTable the runs on record
   * @param ways what the model asks of the world, for the instrument as it is open now
   */
  public FormulaModel of(
      Path folder, Optional<Path> runsTable, FormulaWays ways, Supplier<FormulaModel> fresh) {
    FormulaModel known = byFolder.get(folder);
    if (known != null && known.holds(runsTable)) {
      known.goOn(ways);
      return known;
    }
    FormulaModel made = fresh.get();
    byFolder.put(folder, made);
    made.begin(runsTable);
    return made;
  }
}
