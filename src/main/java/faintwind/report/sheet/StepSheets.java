package faintwind.report.sheet;

import faintwind.guide.Gate;
import faintwind.guide.Progress;
import faintwind.guide.Situation;
import faintwind.guide.StepState;
import faintwind.guide.checklist.Card;
import faintwind.guide.checklist.Stage;
import faintwind.guide.checklist.Step;
import faintwind.message.Messages;
import faintwind.report.card.StepCards;
import faintwind.report.page.Html;
import faintwind.report.page.LogWords;
import faintwind.report.sheet.StepSheetContent.Part;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Steps on paper, to be ticked and filled in by hand: cautions before the instruction, blanks for
 * readings, the stage's banner at the head of each page. One self-contained page of XHTML.
 */
public final class StepSheets {
  private final Messages messages;

  public StepSheets(Messages messages) {
    this.messages = messages;
  }

  /** The whole page. */
  public String html(StepSheetContent content) {
    Progress progress = Progress.of(content.checklist(), content.situation());
    Html html = new Html();
    html.raw(head(content)).raw("<body>");
    List<Part> parts = content.parts();
    for (int i = 0; i < parts.size(); i++) {
      html.raw("<div class=\"part" + i + "\">");
      part(html, content, parts.get(i), progress);
      html.raw("</div>");
    }
    return html.raw("</body></html>").toString();
  }

  private String head(StepSheetContent content) {
    boolean madeUp = content.situation().state().madeUp();
    String label = madeUp ? messages.text("build-log.made-up") : "";
    String language = messages.locale().toLanguageTag().replace("und", "en");
    return "<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\""
        + language
        + "\"><head><meta charset=\"UTF-8\"/><title>"
        + Html.escaped(content.name())
        + "</title><style>"
        + StepSheetStyle.css(content.name(), label, new LogWords(messages), content.parts())
        + "</style></head>";
  }

  private void part(Html html, StepSheetContent content, Part part, Progress progress) {
    Stage stage = part.stage();
    html.element("h2", stage.title());
    stage.banner().ifPresent(banner -> html.element("p", "banner", banner));
    html.element("p", stage.about());
    html.raw(
        "<p class=\"soft\">"
            + Html.escaped(
                messages.text(
                    "print.printed",
                    content.name(),
                    LogWords.time(content.situation().now()),
                    content.checklist().id() + " " + content.checklist().version(),
                    content.checklist().sha256().substring(0, 12)))
            + "</p>");
    Set<Card> printed = new HashSet<>();
    for (Step step : part.steps()) {
      int number = stage.steps().indexOf(step) + 1;
      boolean needed =
          progress.step(step.id()).map(s -> s.state() != StepState.NOT_NEEDED).orElse(true);
      if (needed) {
        step(html, content, part, step, printed);
      } else {
        html.element("p", "soft", messages.text("print.not-needed", number + ". " + step.title()));
      }
    }
  }

  private void step(Html html, StepSheetContent content, Part part, Step step, Set<Card> printed) {
    Situation situation = content.situation();
    StepSheetParts parts = new StepSheetParts(messages, situation);
    int number = part.stage().steps().indexOf(step) + 1;
    html.raw("<div class=\"sheet-step\">");
    html.raw("<h3>" + StepSheetParts.TICK + Html.escaped(number + ". " + step.title()) + "</h3>");
    // A step may stand alone on a page of a screen: the banner goes with each.
    part.stage().banner().ifPresent(banner -> html.element("p", "banner", banner));
    html.element("p", parts.fill(step.text().why()));
    parts.before(html, content.checklist(), step);
    parts.cautions(html, step);
    if (mayBeShown(content, step)) {
      parts.kit(html, step);
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
            + "</p></div>");
  }

  /**
   * Paper is no way round the gate of home plating: what stands behind it prints when it is open.
   */
  private static boolean mayBeShown(StepSheetContent content, Step step) {
    return !step.order().behind().contains(Gate.HOME_PLATING)
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
}
