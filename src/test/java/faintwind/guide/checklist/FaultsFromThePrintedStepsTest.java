package faintwind.guide.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import faintwind.guide.Remedies;
import faintwind.guide.Situation;
import faintwind.guide.Situation.DatedSheet;
import faintwind.physics.Interval;
import faintwind.physics.sheet.DesignSheet;
import faintwind.physics.sheet.OutcomeId;
import faintwind.record.Event.ReadingEntered;
import faintwind.record.Event.StepFinished;
import faintwind.record.InstrumentState;
import faintwind.record.JournalEntry;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Twenty faulty builds drawn up from the printed steps before the remedies were read: what is wrong
 * and the cause to look at first. The values were set to the sample pair, and the words by which a
 * cause is recognised were chosen, with the remedies known. Three builds met no cause at first; a
 * remedy was added or widened for each, so that all twenty now pass and the list is no longer a
 * blind trial. The build is sound up to the step that shows the fault and has gone no further.
 */
class FaultsFromThePrintedStepsTest {
  private static final Checklist CHECKLIST = ShippedChecklist.standard();

  /** The masses of the printed design: a bore right through, and one of three quarters. */
  private static final DesignSheet SHEET =
      SampleBuild.sheet(
          Map.of(
              OutcomeId.HEATED_BALL_MASS, new Interval(8.512, 8.629, 8.748),
              OutcomeId.REFERENCE_BALL_MASS, new Interval(8.722, 8.84, 8.959),
              OutcomeId.BORE_MASS_PER_MM, Interval.exact(0.0764)));

  /** What cannot be undone, in the words a remedy would use for it. */
  private static final Pattern FOR_GOOD =
      Pattern.compile("drill|new ball|made anew|second bore|cut the|pull out|burn");

  /** What is wrong | what the step shows | words of the right cause. */
  private static final String DRAWN =
      """
      lead A scraped as junction 1 went in|lead-a-ball-again=30 Ω;lead-b-ball-again=130 Ω|scraped|lead A
      fingers on both tips at lead A|lead-a-ball=2 MΩ;lead-b-ball=OL 20M|finger|hands|film
      flux film between leads and ball|lead-a-ball=5 MΩ;lead-b-ball=5 MΩ|film|flux
      the epoxy has not cured|lead-a-ball=1.5 MΩ;lead-b-ball=1.5 MΩ|cure
      cold joint at a leg of the resistor|heater-with-leads=104.5|joint
      an 82 Ω resistor|heater-alone=82|not the resistor
      wire of type K in place of T|loop-alone=30|gauge|alloy|type
      the two wires touch before the junction|loop=4|touch|short|bridged
      a junction has let go|loop=OL 20M|let go|broken|open
      coat of junction 1 pierced|loop-heated-ball=3 Ω|junction in the heated ball
      coats of both junctions pierced|loop-heated-ball=5 Ω;loop-reference-ball=5 Ω;ball-ball=6 Ω|both junction
      both balls lie on a metal plate|ball-ball=0.5 Ω|outside|touch
      the fuse of the meter has blown|supply-current=0|fuse
      signal wires exchanged|sense-change=-0.28|exchanged
      heater and signal exchanged at the joints|joined-heater-pair=12.9;joined-signal-pair=101.2|exchanged
      a strand across the heater pair|cable-heater-pair=0.2 Ω|strand|touch|short
      a meter whose range ends at 2 MΩ|meter-proof-10=OL 2M|range
      weak cells|supply-volts=4.5;supply-current=45|sags|fuse
      lead A pinched at the rim by its tie|lead-a-ball-mounted=20 Ω;lead-b-ball-mounted=120 Ω|mount|rim|tie
      the two balls exchanged on the scale|heated-mass=8.84;reference-mass=8.63|exchanged|swapped
      """;

  private record Drawn(String wrong, Map<String, String> shown, List<String> causes) {
    static Drawn of(String line) {
      List<String> parts = Arrays.asList(line.split("\\|", -1));
      Map<String, String> shown = new HashMap<>();
      for (String pair : parts.get(1).split(";", -1)) {
        String[] sides = pair.split("=", -1);
        shown.put(sides[0], sides[1]);
      }
      return new Drawn(parts.get(0), shown, parts.subList(2, parts.size()));
    }

    boolean isNamedBy(Remedy remedy) {
      String cause = remedy.words().cause().toLowerCase(Locale.ROOT);
      return causes.stream().anyMatch(word -> cause.contains(word.toLowerCase(Locale.ROOT)));
    }
  }

  private static final List<Drawn> FAULTS = DRAWN.lines().map(Drawn::of).toList();

  /**
   * The sound build up to the step that shows the fault, with its readings in place of sound ones.
   */
  private static Situation situation(Drawn fault) {
    String any = fault.shown().keySet().iterator().next();
    String step = CHECKLIST.stepOfReading(any).orElseThrow().id();
    List<JournalEntry> entries = new ArrayList<>();
    for (JournalEntry entry : SampleBuild.complete(CHECKLIST)) {
      entries.add(entry);
      if (entry.step().filter(step::equals).isPresent() && entry.event() instanceof StepFinished) {
        break;
      }
    }
    for (Map.Entry<String, String> shown : fault.shown().entrySet()) {
      Step of = CHECKLIST.stepOfReading(shown.getKey()).orElseThrow();
      String unit = of.reading(shown.getKey()).orElseThrow().unit();
      entries.add(
          SampleBuild.entry(
              "f" + entries.size(),
              of.id(),
              new ReadingEntered(
                  shown.getKey(),
                  shown.getValue(),
                  SampleBuild.amount(shown.getValue(), unit),
                  Optional.empty())));
    }
    return new Situation(
        InstrumentState.replay(entries),
        List.of(new DatedSheet(SampleBuild.BEGIN, SHEET)),
        SampleBuild.LATER);
  }

  /** Right: the first cause names it. Open: the second does, and the first says how to tell. */
  private static String judge(Drawn fault, List<Remedy> remedies) {
    if (remedies.isEmpty()) {
      return "no cause";
    }
    if (fault.isNamedBy(remedies.get(0))) {
      return "right";
    }
    boolean told = remedies.get(0).words().apart().isPresent();
    return told && remedies.stream().skip(1).limit(1).anyMatch(fault::isNamedBy) ? "open" : "wrong";
  }

  @Test
  void eighteenOfTwentyAreMetRightOrHonestlyOpen() {
    List<String> lines = new ArrayList<>();
    int met = 0;
    for (Drawn fault : FAULTS) {
      List<Remedy> remedies = Remedies.of(CHECKLIST, situation(fault));
      String judged = judge(fault, remedies);
      met += judged.equals("right") || judged.equals("open") ? 1 : 0;
      lines.add(
          judged + ": " + fault.wrong() + " -> " + remedies.stream().map(Remedy::id).toList());
    }
    String table = String.join("\n", lines);
    System.out.println(met + " of " + FAULTS.size() + "\n" + table);
    assertThat(FAULTS).hasSize(20);
    assertThat(met).as(table).isGreaterThanOrEqualTo(18);
  }

  @Test
  void nothingThatCannotBeUndoneIsProposedFirst() {
    for (Drawn fault : FAULTS) {
      Situation now = situation(fault);
      for (Remedy remedy : Remedies.of(CHECKLIST, now)) {
        assertThat(Remedies.todo(CHECKLIST, remedy, now))
            .as(fault.wrong() + " " + remedy.id())
            .doesNotContainPattern(FOR_GOOD);
      }
    }
  }
}
