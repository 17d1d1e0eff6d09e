package faintwind.ui.home;

import faintwind.ui.instrument.StepMarks;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * Which instruments are shown, and in which order.
 *
 * @param filter by their state
 * @param wanted words that the row says; all where it is empty
 * @param byName in the order of the alphabet instead of who needs you
 */
record HomeChoice(HomeFilter filter, String wanted, boolean byName) {
  static final HomeChoice ALL_BY_NEED = new HomeChoice(HomeFilter.ALL, "", false);

  HomeChoice with(HomeFilter now) {
    return new HomeChoice(now, wanted, byName);
  }

  HomeChoice with(String nowWanted) {
    return new HomeChoice(filter, nowWanted.strip().toLowerCase(Locale.ROOT), byName);
  }

  HomeChoice inOtherOrder() {
    return new HomeChoice(filter, wanted, !byName);
  }

  /** Those that are shown, in order. */
  List<HomeView.Line> of(List<HomeView.Line> all) {
    Comparator<HomeView.Line> name =
        Comparator.comparing(HomeView.Line::name, String.CASE_INSENSITIVE_ORDER);
    Comparator<HomeView.Line> need =
        Comparator.comparing((HomeView.Line line) -> line.state().mark(), StepMarks.byNeed())
            .thenComparing(name);
    return all.stream()
        .filter(filter::shows)
        .filter(line -> line.said().toLowerCase(Locale.ROOT).contains(wanted))
        .sorted(byName ? name : need)
        .toList();
  }
}
