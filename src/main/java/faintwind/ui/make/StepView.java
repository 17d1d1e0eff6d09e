package faintwind.ui.make;

import faintwind.guide.checklist.Step.Picture;
import faintwind.report.card.StepCard;
import faintwind.report.paint.PlotFigure;
import faintwind.ui.part.CautionCard;
import faintwind.ui.part.ClockView;
import faintwind.ui.part.GateList.Missing;
import faintwind.ui.part.Mark;
import java.util.List;
import java.util.Optional;

/**
 * Everything a step's sheet and margin show at one moment, in words.
 *
 * @param heading where one is
 * @param cautions what is to be read first
 * @param instruction what to do
 * @param questions to be answered
 * @param readings to be typed
 * @param aside what stands in the margin
 * @param outcome what is wrong or missing
 */
public record StepView(
    Heading heading,
    List<CautionCard.Content> cautions,
    Instruction instruction,
    List<Asked> questions,
    List<ReadingLine> readings,
    Aside aside,
    Outcome outcome) {
  public StepView {
    cautions = List.copyOf(cautions);
    questions = List.copyOf(questions);
    readings = List.copyOf(readings);
  }

  /**
   * Head of the sheet.
   *
   * @param banner words of the stage that stand on each of its pages; may be empty
   * @param crumb stage and number of the step
   * @param title the step's title
   * @param notices what a later change made doubtful, and waivers
   */
  public record Heading(String banner, String crumb, String title, List<String> notices) {
    public Heading {
      notices = List.copyOf(notices);
    }
  }

  /** Why an instruction must not be read yet. */
  public enum Cover {
    NONE,
    /** A caution before it is not read. */
    CAUTIONS,
    /** A gate before it is closed. */
    GATE
  }

  /**
   * What to do.
   *
   * @param cover whether it must not be read yet
   * @param how one instruction a line
   * @param kit tools and parts in one line; may be empty
   */
  public record Instruction(Cover cover, List<String> how, String kit) {
    public Instruction {
      how = List.copyOf(how);
    }

    public boolean covered() {
      return cover != Cover.NONE;
    }
  }

  /**
   * A question.
   *
   * @param id in its step
   * @param text the question
   * @param choices its answers
   * @param chosen id of the answer given; empty where none was
   * @param stop why the way ends here; empty where it does not
   */
  public record Asked(String id, String text, List<Option> choices, String chosen, String stop) {
    public Asked {
      choices = List.copyOf(choices);
    }

    /** One answer. */
    public record Option(String id, String text) {}
  }

  /**
   * A reading.
   *
   * @param id in the checklist
   * @param label what is measured
   * @param expected what to expect, in words
   * @param unit symbol
   * @param answer the entry that counts
   * @param earlier every other entry, the latest first
   * @param probes where the tips of the meter go
   */
  public record ReadingLine(
      String id,
      String label,
      String expected,
      String unit,
      Answer answer,
      List<Earlier> earlier,
      Optional<Probes> probes) {
    public ReadingLine {
      earlier = List.copyOf(earlier);
    }
  }

  /**
   * An entry that does not count any more.
   *
   * @param text what was typed, the verdict then, when and by whom
   * @param struck who struck it, when and why; empty where a later reading took its place
   */
  public record Earlier(String text, String struck) {}

  /** Two points of a bench's drawing that the tips go to, and the same in words. */
  public record Probes(String scene, String one, String other, String shows) {}

  /**
   * The meter.
   *
   * @param chosen id of the class in use
   * @param options all classes
   * @param lines how wrong it may be, what it cannot show
   */
  public record MeterFace(String chosen, List<MeterKind> options, List<String> lines) {
    public MeterFace {
      options = List.copyOf(options);
      lines = List.copyOf(lines);
    }
  }

  /** One class of meter. */
  public record MeterKind(String id, String name) {}

  /**
   * What was typed and what it was judged to be.
   *
   * @param typed as typed; empty where nothing was
   * @param mark of the verdict; ready where there is none
   * @param verdict the word; empty where there is none
   * @param kept when it was kept, in words
   */
  public record Answer(String typed, Mark mark, String verdict, String kept) {
    static final Answer NONE = new Answer("", Mark.READY, "", "");

    public boolean isGiven() {
      return !typed.isEmpty();
    }
  }

  /**
   * The margin.
   *
   * @param picture drawn beside the step
   * @param reasons why, and what good and bad look like
   * @param clock where one runs or ran
   * @param photos what photo is wanted and how many there are
   * @param cards what the stage takes, on its first page; what is worked out from the design
   * @param meter where the step is measured with one
   * @param trends of the readings that were taken often enough
   */
  public record Aside(
      Optional<Picture> picture,
      Reasons reasons,
      Optional<ClockView.Face> clock,
      Optional<Photos> photos,
      List<StepCard> cards,
      Optional<MeterFace> meter,
      List<PlotFigure> trends) {
    public Aside {
      cards = List.copyOf(cards);
      trends = List.copyOf(trends);
    }
  }

  /**
   * Why, and what to look for.
   *
   * @param why the reason for the step
   * @param good what good looks like
   * @param wrong what goes wrong, and what to do then
   */
  public record Reasons(String why, String good, List<String> wrong) {
    public Reasons {
      wrong = List.copyOf(wrong);
    }
  }

  /** The photo that is wanted, empty where none is, and the files that were kept. */
  public record Photos(String wanted, List<String> kept) {
    public Photos {
      kept = List.copyOf(kept);
    }
  }

  /**
   * What keeps the step from being finished.
   *
   * @param trouble the wash across the sheet; empty where nothing is wrong
   * @param missing steps and gates before this one that are not there yet
   */
  public record Outcome(Optional<Trouble> trouble, List<Missing> missing) {
    public Outcome {
      missing = List.copyOf(missing);
    }
  }

  /**
   * What is wrong.
   *
   * @param mark blocked or attention
   * @param cause in a sentence
   * @param because why one thinks so
   * @param nextLikely the next likely cause; may be empty
   * @param todo what to do
   * @param locked what stays locked meanwhile; may be empty
   * @param waivable id of the reading that can be gone on without; empty where none can
   */
  public record Trouble(
      Mark mark,
      String cause,
      String because,
      String nextLikely,
      String todo,
      String locked,
      String waivable) {}
}
