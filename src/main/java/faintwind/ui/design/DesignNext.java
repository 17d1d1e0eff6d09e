package faintwind.ui.design;

import faintwind.message.Messages;
import faintwind.physics.advice.Suggestion;
import faintwind.physics.sheet.DesignVerdict;
import faintwind.ui.part.Act;
import faintwind.ui.part.Mark;
import faintwind.ui.part.Next;

/** Says what to do now on each page of the design screen. */
final class DesignNext {
  private final DesignModel model;
  private final Messages words;

  private DesignNext(DesignModel model, Messages words) {
    this.model = model;
    this.words = words;
  }

  static Next of(DesignModel model, Messages words) {
    return new DesignNext(model, words).say();
  }

  private Next say() {
    if (!model.view().get().problems().isEmpty()) {
      return Next.say(Mark.BLOCKED, words.text("design.next.refused"))
          .withDetail(words.text("design.next.refused-detail"));
    }
    if (model.view().get().worked().isEmpty()) {
      return Next.say(Mark.READY, words.text("design.next.wait"));
    }
    if (!model.saved().isEmpty()) {
      return Next.say(Mark.DONE, words.text("design.next.saved", model.saved()))
          .withDetail(words.text("design.next.saved-detail"));
    }
    return switch (model.page().get()) {
      case WISH -> sayWish();
      case PARTS -> sayParts();
      case DESIGN -> sayDesign();
      case OTHERS, SIDE -> sayLook();
    };
  }

  private Next sayWish() {
    DesignWishModel.Answer answer = model.wish().answer().get();
    if (answer.suggestions().isEmpty()) {
      return Next.say(
          answer.known() ? Mark.ATTENTION : Mark.DOING,
          words.text(answer.known() ? "design.next.wish-none" : "design.next.wish-wait"));
    }
    Suggestion first = answer.suggestions().get(0);
    Act take =
        new Act(
            "design-take-first",
            words.text("design.next.wish.act", first.design().name()),
            () -> model.take(first));
    return Next.say(Mark.READY, words.text("design.next.wish"), take)
        .withDetail(words.text("design.next.wish-detail"));
  }

  private Next sayLook() {
    Act back =
        new Act(
            "design-back", words.text("design.next.back.act"), () -> model.open(DesignPage.DESIGN));
    String key = model.page().get() == DesignPage.SIDE ? "design.next.side" : "design.next.others";
    return Next.say(Mark.READY, words.text(key), back)
        .withDetail(words.text("design.next.look-detail"));
  }

  private Next sayParts() {
    Act print =
        new Act("parts-pdf", words.text("design.next.pdf.act"), () -> model.saveParts("pdf"));
    Act page =
        new Act("parts-html", words.text("design.next.html.act"), () -> model.saveParts("html"));
    Act table =
        new Act("parts-csv", words.text("design.next.csv.act"), () -> model.saveParts("csv"));
    return Next.say(Mark.READY, words.text("design.next.parts"), print)
        .withDetail(words.text("design.next.parts-list-detail"))
        .withOther(table)
        .withOther(page);
  }

  private Next sayDesign() {
    Act list =
        new Act(
            "design-parts",
            words.text("design.next.parts.act"),
            () -> model.open(DesignPage.PARTS));
    Act keep = new Act("design-keep", words.text("design.next.keep.act"), model::keep);
    if (model.count(DesignVerdict.STOP) > 0) {
      return Next.say(Mark.BLOCKED, words.text("design.next.stop"))
          .withDetail(words.text("design.next.stop-detail"))
          .withOther(list);
    }
    if (model.isKept()) {
      return Next.say(Mark.DONE, words.text("design.next.kept"), list)
          .withDetail(words.text("design.next.kept-detail"));
    }
    Mark mark = model.count(DesignVerdict.IMPROVE) > 0 ? Mark.ATTENTION : Mark.DONE;
    return Next.say(mark, words.text("design.next.keep"), keep)
        .withDetail(words.text("design.next.keep-detail"))
        .withOther(list);
  }
}
