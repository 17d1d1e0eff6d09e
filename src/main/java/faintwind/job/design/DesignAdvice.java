package faintwind.job.design;

import faintwind.message.Messages;
import faintwind.message.Numerals;
import faintwind.message.Problem;
import faintwind.physics.Interval;
import faintwind.physics.advice.Substitution;
import faintwind.physics.advice.Suggest;
import faintwind.physics.advice.Suggestion;
import faintwind.physics.advice.Wish;
import faintwind.physics.design.Design;
import faintwind.physics.part.Catalogue;
import faintwind.physics.sheet.DesignSheet;
import faintwind.physics.sheet.OutcomeId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Other designs for the same wish, and what usual substitutions would change. */
public final class DesignAdvice {
  /** Time constant asked for at 1 m/s where nobody said: what half-inch copper nearly reaches. */
  public static final double USUAL_RESPONSE_S = 120;

  private static final List<OutcomeId> COMPARED =
      List.of(
          OutcomeId.HEATER_RESISTANCE,
          OutcomeId.HEATER_POWER,
          OutcomeId.STILL_DELTA,
          OutcomeId.DELTA_AT_1,
          OutcomeId.TIME_CONSTANT_AT_3,
          OutcomeId.SIGNAL_STILL,
          OutcomeId.SMALLEST_SPEED,
          OutcomeId.SUN_SHARE,
          OutcomeId.HEATED_BALL_TEMPERATURE);

  private DesignAdvice() {}

  /**
   * Two or three designs for what a design is for, with the logger and the supply that it has.
   *
   * @param design says place, contact, speeds, air, logger and supply; its other choices do not
   *     count
   * @param parts what may be chosen from
   */
  public static List<Suggestion> suggestions(Design design, Catalogue parts) {
    Wish.AtHand atHand =
        new Wish.AtHand(
            design.sense().logger(),
            design.sense().gain(),
            design.sense().averaging_s(),
            design.supply());
    Wish.Spend spend = design.ball().plating().isPresent() ? Wish.Spend.SOME : Wish.Spend.LITTLE;
    Wish wish = new Wish(design.use(), USUAL_RESPONSE_S, atHand, design.air(), spend);
    return suggestions(wish, parts);
  }

  /**
   * Two or three designs for a wish, the balanced one first; none where nothing safe can be made.
   */
  public static List<Suggestion> suggestions(Wish wish, Catalogue parts) {
    return Suggest.designs(wish, parts);
  }

  /** The present design and each suggestion with its reasons, as lines. */
  public static List<String> lines(
      DesignSheet present, List<Suggestion> suggestions, Messages words) {
    List<String> lines = new ArrayList<>();
    lines.add(words.text(suggestions.isEmpty() ? "suggest.none" : "suggest.head"));
    for (Suggestion s : suggestions) {
      lines.add("");
      lines.add(
          words.text(
              "suggest.design",
              s.design().name(),
              s.design().ball().coat().label().name(),
              s.design().sense().type().label().name()));
      for (Problem reason : s.reasons()) {
        lines.add("  " + words.sentence(reason));
      }
      for (OutcomeId id : COMPARED) {
        change(present, s.sheet(), id, words).ifPresent(lines::add);
      }
    }
    return lines;
  }

  /** What each usual substitution would change, as lines. */
  public static List<String> lines(List<Substitution> substitutions, Messages words) {
    List<String> lines = new ArrayList<>();
    for (Substitution s : substitutions) {
      lines.add(words.text("substitution." + s.id(), s.by()));
      for (Substitution.Consequence c : s.consequences()) {
        lines.add(line(c.before().id(), c.before().value(), c.after().value(), words));
        c.after()
            .reason()
            .filter(r -> c.after().verdict() != c.before().verdict())
            .ifPresent(r -> lines.add("    " + words.sentence(r)));
      }
    }
    return lines;
  }

  private static Optional<String> change(
      DesignSheet present, DesignSheet other, OutcomeId id, Messages words) {
    return present
        .quantity(id)
        .flatMap(a -> other.quantity(id).map(b -> line(id, a.value(), b.value(), words)));
  }

  private static String line(OutcomeId id, Interval before, Interval after, Messages words) {
    String name = words.text("quantity." + id.id());
    return "  "
        + words
            .text(
                "substitution.change",
                name,
                Numerals.digits(before.nominal()),
                Numerals.digits(after.nominal()),
                id.unit())
            .strip();
  }
}
