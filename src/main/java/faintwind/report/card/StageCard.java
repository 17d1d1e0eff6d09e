package faintwind.report.card;

import faintwind.guide.Progress;
import faintwind.guide.Situation;
import faintwind.guide.checklist.Stage;
import faintwind.guide.checklist.Step;
import faintwind.message.AmountText;
import faintwind.message.Messages;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;

/** What a stage gives and what it takes, for its first page. */
public final class StageCard {
  private StageCard() {}

  /**
   * The card of a stage.
   *
   * @param progress tells which of its steps are needed
   */
  public static StepCard of(Stage stage, Progress progress, Situation situation, Messages words) {
    List<Step> needed = stage.steps().stream().filter(progress::needs).toList();
    List<StepCard.Row> rows = new ArrayList<>();
    rows.add(row(words, "card.stage.ends", stage.ends().orElse(stage.about())));
    int minutes = needed.stream().mapToInt(step -> step.kit().minutes().orElse(0)).sum();
    if (minutes > 0) {
      rows.add(
          row(words, "card.stage.hands", words.text("card.stage.about", time(minutes, words))));
    }
    for (Step step : needed) {
      step.asks()
          .clock()
          .filter(clock -> clock.runs(situation.sheetValues()))
          .ifPresent(clock -> rows.add(clock(clock, situation, words)));
    }
    List<String> remarks = new ArrayList<>();
    addKit(remarks, "today.tools", kit(needed, Step.Kit::tools), words);
    addKit(remarks, "today.parts", kit(needed, Step.Kit::parts), words);
    return new StepCard(words.text("card.stage", stage.title()), List.of(), rows, remarks);
  }

  private static StepCard.Row row(Messages words, String key, String value) {
    return new StepCard.Row(words.text(key), value, "");
  }

  private static StepCard.Row clock(Step.ClockSpec clock, Situation situation, Messages words) {
    String time =
        clock.duration_s().number(situation.sheetValues()).stream()
            .mapToObj(seconds -> time(seconds / 60, words))
            .findFirst()
            .orElseGet(() -> words.text("guide.value-not-known"));
    return new StepCard.Row(situation.fill(clock.label(), words), time, "");
  }

  /** Two digits: such times are estimates. */
  private static String time(double minutes, Messages words) {
    return minutes >= 120
        ? AmountText.quantity(minutes / 60, "h", 2, words.locale())
        : AmountText.quantity(Math.ceil(minutes), "min", 2, words.locale());
  }

  private static SortedSet<String> kit(List<Step> steps, Function<Step.Kit, List<String>> things) {
    SortedSet<String> all = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
    steps.forEach(step -> all.addAll(things.apply(step.kit())));
    return all;
  }

  private static void addKit(
      List<String> to, String key, SortedSet<String> things, Messages words) {
    if (!things.isEmpty()) {
      to.add(words.text(key, String.join(", ", things)));
    }
  }
}
