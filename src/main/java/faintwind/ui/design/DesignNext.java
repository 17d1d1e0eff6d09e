package faintwind.ui.design;

import faintwind.message.Messages;
import faintwind.physics.advice.Suggestion;
import faintwind.physics.sheet.DesignVerdict;
import faintwind.ui.part.Act;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;
import java.util.Optional;

/** Says what to do now on each page of the design screen. */
final class DesignNext {
  private final At at;
  private final Acts acts;
  private final Messages words;

  /**
   * Where the work stands.
   *
   * @param answer the design, or what is wrong with it
   * @param page the page that is open
   * @param wish what was found for the wish
   * @param kept whether the design is the one on record
   * @param saved where the parts list was saved last, while that is news
   */
  record At(
      DesignAnswer answer,
      DesignPage page,
      DesignWishModel.Answer wish,
      boolean kept,
      String saved) {}

  /** What can be done next. */
  interface Acts {
    void open(DesignPage page);

    void take(Suggestion suggestion);

    void keep();

    void saveParts(String ending);

    /** Goes to the steps of making it. */
    void make();
  }

  DesignNext(At at, Acts acts, Messages words) {
    this.at = at;
    this.acts = acts;
    this.words = words;
  }

  Next say() {
    if (!at.answer().problems().isEmpty()) {
      return Next.say(Mark.BLOCKED, words.text("design.next.refused"))
          .withDetail(words.text("design.next.refused-detail"));
    }
    if (at.answer().worked().isEmpty()) {
      return Next.say(Mark.READY, words.text("design.next.wait"));
    }
    if (!at.saved().isEmpty()) {
      Act make = new Act("design-make", words.text("design.next.make.act"), acts::make);
      return Next.say(Mark.DONE, words.text("design.next.saved", at.saved()), make)
          .withDetail(words.text("design.next.saved-detail"));
    }
    return switch (at.page()) {
      case WISH -> sayWish();
      case PARTS -> sayParts();
      case DESIGN -> sayDesign();
      case OTHERS, SIDE -> sayLook();
    };
  }

  private Next sayWish() {
    DesignWishModel.Answer answer = at.wish();
    if (answer.suggestions().isEmpty()) {
      return Next.say(
          answer.known() ? Mark.ATTENTION : Mark.DOING,
          words.text(answer.known() ? "design.next.wish-none" : "design.next.wish-wait"));
    }
    Act take = taking(answer, acts, words).orElseThrow();
    return Next.say(Mark.READY, words.text("design.next.wish"), take)
        .withDetail(words.text("design.next.wish-detail"));
  }

  /** Takes the first proposal; empty where there is none. */
  static Optional<Act> taking(DesignWishModel.Answer answer, Acts acts, Messages words) {
    return answer.suggestions().stream()
        .findFirst()
        .map(
            first ->
                new Act(
                    "design-take-first",
                    words.text("design.next.wish.act", first.design().name()),
                    () -> acts.take(first)));
  }

  private Next sayLook() {
    Act back =
        new Act(
            "design-back", words.text("design.next.back.act"), () -> acts.open(DesignPage.DESIGN));
    String key = at.page() == DesignPage.SIDE ? "design.next.side" : "design.next.others";
    return Next.say(Mark.READY, words.text(key), back)
        .withDetail(words.text("design.next.look-detail"));
  }

  private Next sayParts() {
    Act print =
        new Act("parts-pdf", words.text("design.next.pdf.act"), () -> acts.saveParts("pdf"));
    Act page =
        new Act("parts-html", words.text("design.next.html.act"), () -> acts.saveParts("html"));
    Act table =
        new Act("parts-csv", words.text("design.next.csv.act"), () -> acts.saveParts("csv"));
    return Next.say(Mark.READY, words.text("design.next.parts"), print)
        .withDetail(words.text("design.next.parts-list-detail"))
        .withOther(table)
        .withOther(page);
  }

  private Next sayDesign() {
    Act list =
        new Act(
            "design-parts", words.text("design.next.parts.act"), () -> acts.open(DesignPage.PARTS));
    Act keep = new Act("design-keep", words.text("design.next.keep.act"), acts::keep);
    if (at.answer().count(DesignVerdict.STOP) > 0) {
      return Next.say(Mark.BLOCKED, words.text("design.next.stop"))
          .withDetail(words.text("design.next.stop-detail"))
          .withOther(list);
    }
    if (at.kept()) {
      return Next.say(Mark.DONE, words.text("design.next.kept"), list)
          .withDetail(words.text("design.next.kept-detail"));
    }
    Mark mark = at.answer().count(DesignVerdict.IMPROVE) > 0 ? Mark.ATTENTION : Mark.DONE;
    return Next.say(mark, words.text("design.next.keep"), keep)
        .withDetail(words.text("design.next.keep-detail"))
        .withOther(list);
  }
}
