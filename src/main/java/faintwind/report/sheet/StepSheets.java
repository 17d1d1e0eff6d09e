package faintwind.report.sheet;

import faintwind.guide.Gate;
import faintwind.guide.Progress;
import faintwind.guide.Situation;
import faintwind.guide.checklist.Card;
import faintwind.guide.checklist.Stage;
import faintwind.guide.checklist.Step;
import faintwind.message.DateText;
import faintwind.message.Messages;
import faintwind.report.card.StageCard;
import faintwind.report.card.StepCard;
import faintwind.report.card.StepCards;
import faintwind.report.page.Html;
import faintwind.report.page.LogWords;
import faintwind.report.page.Page;
import faintwind.report.sheet.StepSheetContent.Part;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Steps on paper, to be ticked and filled in by hand: cautions before the instruction, blanks for
 * readings, the stage's banner at the head of each page. One self-contained page of XHTML.
 */
public final class StepSheets {
  @SuppressWarnings("InlineFormatString") // stands beside the other style
  private static final String PART_STYLE =
      """
      @page %1$s { @top-center { content: "%2$s"; font-size: 9pt; font-weight: bold;
        font-family: "DejaVu Sans"; } }
      .%1$s { page: %1$s; }
      """;

  private static final String STYLE =
      """
      .sheet-step { border-top: 1px solid #000000; padding-top: 4px; margin: 1.6em 0 0; }
      .tick { display: inline-block; width: 3mm; height: 3mm; border: 1px solid #000000;
        margin: 0 2mm 0 0; }
      .blank { display: inline-block; width: 34mm; border-bottom: 1px solid #000000; }
      .short { display: inline-block; width: 22mm; border-bottom: 1px solid #000000; }
      .caution { border: 1px solid #000000; padding: 4px 8px; margin: 4px 0;
        page-break-inside: avoid; }
      .todo { margin: 3px 0 3px 4mm; page-break-inside: avoid; }
      .ends { margin-left: 7mm; font-style: normal; }
      table.drawings td { border: none; }
      .drawings { page-break-inside: avoid; }
      .drawings svg, .drawings img { width: 72mm; height: 55mm; }
      .drawings svg.tall { width: 72mm; height: 104mm; }
      """;

  private final Messages messages;

  public StepSheets(Messages messages) {
    this.messages = messages;
  }

  /** The whole page. */
  public String html(StepSheetContent content) {
    Progress progress = Progress.of(content.checklist(), content.situation());
    boolean madeUp = content.situation().state().madeUp();
    String label = madeUp ? messages.text("build-log.made-up") : "";
    List<Part> parts = content.parts();
    return new Page(new LogWords(messages), content.name(), label, style(parts))
        .html(
            html -> {
              for (int i = 0; i < parts.size(); i++) {
                Part part = parts.get(i);
                html.block("part" + i, () -> part(html, content, part, progress));
              }
            });
  }

  /** Each part has pages of its own kind, so that its banner stands at the head of every one. */
  private static String style(List<Part> parts) {
    StringBuilder pages = new StringBuilder(STYLE);
    for (int i = 0; i < parts.size(); i++) {
      String banner = Page.quoted(parts.get(i).stage().banner().orElse(""));
      pages.append(filled(PART_STYLE, "part" + i, banner));
      if (i > 0) {
        pages.append(".part").append(i).append(" { page-break-before: always; }\n");
      }
    }
    return pages.toString();
  }

  private void part(Html html, StepSheetContent content, Part part, Progress progress) {
    Stage stage = part.stage();
    html.element("h2", stage.title());
    stage.banner().ifPresent(banner -> html.element("p", "banner", banner));
    html.element("p", stage.about());
    html.element(
        "p",
        "soft",
        messages.text(
            "print.printed",
            content.name(),
            DateText.zoned(messages, content.situation().now()),
            content.checklist().id() + " " + content.checklist().version(),
            content.checklist().sha256().substring(0, 12)));
    if (part.steps().contains(stage.steps().get(0))) {
      StepCard card = StageCard.of(stage, progress, content.situation(), messages);
      StepSheetCard.write(html, card, messages.locale());
    }
    Set<Card> printed = new HashSet<>();
    for (Step step : part.steps()) {
      int number = stage.steps().indexOf(step) + 1;
      if (progress.needs(step)) {
        html.block("sheet-step", () -> step(html, content, part, step, printed));
      } else {
        html.element("p", "soft", messages.text("print.not-needed", number + ". " + step.title()));
      }
    }
  }

  private void step(Html html, StepSheetContent content, Part part, Step step, Set<Card> printed) {
    Situation situation = content.situation();
    StepSheetParts parts = new StepSheetParts(messages, situation);
    int number = part.stage().steps().indexOf(step) + 1;
    html.raw("<h3>" + StepSheetParts.TICK + Html.escaped(number + ". " + step.title()) + "</h3>");
    // A step may stand alone on a page of a screen: the banner goes with each.
    part.stage().banner().ifPresent(banner -> html.element("p", "banner", banner));
    html.element("p", parts.fill(step.text().why()));
    parts.before(html, content.checklist(), step);
    parts.cautions(html, step);
    if (mayBeShown(content, step)) {
      parts.kit(html, step);
      parts.picture(html, step, content.pictures());
      step.text().how().forEach(line -> parts.todo(html, parts.fill(line)));
      step.text().card().ifPresent(card -> card(html, card, situation, printed));
    } else {
      html.element("p", "banner", messages.text("print.withheld"));
    }
    parts.questions(html, step);
    parts.readings(html, step);
    parts.clock(html, step);
    step.asks().photo().ifPresent(of -> parts.todo(html, messages.text("print.photo", of)));
    html.element("p", messages.text("print.good", parts.fill(step.text().good())));
    for (String wrong : step.text().wrong()) {
      html.element("p", messages.text("print.wrong", parts.fill(wrong)));
    }
    html.raw(
        "<p>"
            + Html.escaped(messages.text("print.done"))
            + StepSheetParts.BLANK
            + Html.escaped(messages.text("print.date"))
            + StepSheetParts.SHORT
            + "</p>");
  }

  /**
   * Paper is no way round a gate: what stands behind home plating prints when it is open, what
   * stands behind heater power not while the design on record says stop.
   */
  private static boolean mayBeShown(StepSheetContent content, Step step) {
    List<String> behind = step.order().behind();
    if (behind.contains(Gate.HEATER_POWER) && !Gate.designStops(content.situation()).isEmpty()) {
      return false;
    }
    return !behind.contains(Gate.HOME_PLATING)
        || Gate.check(content.checklist(), Gate.HOME_PLATING, content.situation()).open();
  }

  /** Each card stands once on a sheet. */
  private void card(Html html, Card card, Situation situation, Set<Card> printed) {
    new StepCards(messages)
        .of(card, situation)
        .ifPresent(
            filled -> {
              if (printed.add(card)) {
                StepSheetCard.write(html, filled, messages.locale());
              } else {
                html.element("p", messages.text("print.card-above", filled.title()));
              }
            });
  }

  private static String filled(String pattern, Object... texts) {
    return String.format(Locale.ROOT, pattern, texts);
  }
}
