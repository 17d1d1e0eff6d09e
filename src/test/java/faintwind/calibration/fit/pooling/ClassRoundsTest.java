package faintwind.calibration.fit.pooling;

import static faintwind.calibration.pool.MadeSessions.NAMES;
import static faintwind.calibration.pool.MadeSessions.off;
import static faintwind.calibration.pool.MadeSessions.session;
import static faintwind.calibration.pool.MadeSessions.sound;
import static org.assertj.core.api.Assertions.assertThat;

import faintwind.calibration.pool.Pool;
import faintwind.calibration.pool.SessionShown;
import faintwind.calibration.run.ClassKnown;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Classes whose fits are made up: what each says after a round, and what agreeing costs it. */
class ClassRoundsTest {
  private static final double U = 0.01;
  private static final double TRUTH = 0.1;

  /** What agreeing costs where nothing is wrong, and where something is. */
  private static final double USUAL = 2;

  private static final double MUCH = 400;

  /** One fit of an instrument: after so many rounds. */
  private record Fit(int index, int round, SessionShown shown) {}

  /** Fits that come to rest nearer to the truth in every round, and the costs set by the test. */
  private static final class Lesson implements ClassRounds.Fits<Fit> {
    final List<Fit> alone = new ArrayList<>();
    final Map<Integer, List<Double>> costs = new HashMap<>();
    final Map<Integer, SessionShown> afterOneRound = new HashMap<>();
    final List<Integer> asked = new ArrayList<>();

    Lesson(List<SessionShown> sessions) {
      for (SessionShown session : sessions) {
        alone.add(new Fit(alone.size(), 0, session));
      }
    }

    ClassRounds<Fit> run() {
      return new ClassRounds<>(alone, this).run(3);
    }

    SessionShown after(int index, int round) {
      SessionShown own = alone.get(index).shown();
      if (round == 0) {
        return own;
      }
      if (afterOneRound.containsKey(index)) {
        return afterOneRound.get(index);
      }
      double[] off = new double[NAMES.size()];
      for (int i = 0; i < off.length; i++) {
        off[i] = (own.estimates().get(i) - TRUTH) / (1 + round);
      }
      return session(TRUTH, off, U);
    }

    /** What the others of these say of one of them, all after so many rounds. */
    ClassKnown known(List<Integer> sound, int of, int round) {
      List<SessionShown> shown = sound.stream().map(i -> after(i, round)).toList();
      return new Pool(alone.get(0).shown(), shown).known(sound.indexOf(of));
    }

    @Override
    public SessionShown shown(Fit fit) {
      return fit.shown();
    }

    @Override
    public double costOfAgreeing(Fit fit, ClassKnown others) {
      assertThat(fit).as("what it says by itself").isSameAs(alone.get(fit.index()));
      long before = asked.stream().filter(i -> i == fit.index()).count();
      asked.add(fit.index());
      assertThat(asked).as("rounds come to an end").hasSizeLessThan(60);
      List<Double> own = costs.getOrDefault(fit.index(), List.of(USUAL));
      return own.get((int) Math.min(before, own.size() - 1));
    }

    @Override
    public Fit among(Fit fit, ClassKnown others) {
      return new Fit(fit.index(), fit.round() + 1, after(fit.index(), fit.round() + 1));
    }
  }

  private static List<Integer> out(List<ClassMember<Fit>> members) {
    return IntStream.range(0, members.size())
        .filter(i -> members.get(i).standsOut().isPresent())
        .boxed()
        .toList();
  }

  private static void keepsItsOwn(Lesson made, List<ClassMember<Fit>> members, int index) {
    assertThat(members.get(index).fit()).isSameAs(made.alone.get(index));
    assertThat(members.get(index).heard()).isEqualTo(ClassKnown.NOTHING);
  }

  private static void heard(
      Lesson made, List<ClassMember<Fit>> members, List<Integer> sound, int rounds) {
    for (int i : sound) {
      assertThat(members.get(i).fit().index()).isEqualTo(i);
      assertThat(members.get(i).fit().round()).isEqualTo(rounds);
      assertThat(members.get(i).heard()).isEqualTo(made.known(sound, i, rounds - 1));
    }
  }

  @Test
  void inThreeRoundsEachHearsWhatTheOthersSayByThen() {
    Lesson made = new Lesson(sound(5, TRUTH, U));
    ClassRounds<Fit> rounds = made.run();
    assertThat(out(rounds.members())).isEmpty();
    heard(made, rounds.members(), List.of(0, 1, 2, 3, 4), 3);
    List<SessionShown> last = IntStream.range(0, 5).mapToObj(i -> made.after(i, 3)).toList();
    assertThat(rounds.spread()).isEqualTo(new Pool(last.get(0), last).spread());
  }

  @Test
  void whomAgreeingCostsMuchKeepsItsOwnFitAndIsHeardNoMore() {
    List<SessionShown> sessions = sound(5, TRUTH, U);
    sessions.set(2, session(TRUTH, off("tilt", 0.4), U));
    Lesson made = new Lesson(sessions);
    made.costs.put(2, List.of(MUCH));
    ClassRounds<Fit> rounds = made.run();
    assertThat(out(rounds.members())).containsExactly(2);
    keepsItsOwn(made, rounds.members(), 2);
    assertThat(rounds.members().get(2).standsOut().orElseThrow().what()).isEqualTo("TILT");
    List<Integer> others = List.of(0, 1, 3, 4);
    heard(made, rounds.members(), others, 4);
    assertThat(made.asked).filteredOn(i -> i == 2).hasSize(1);
    List<SessionShown> last = others.stream().map(i -> made.after(i, 4)).toList();
    assertThat(rounds.spread()).isEqualTo(new Pool(last.get(0), last).spread());
  }

  @Test
  void ofTwoTheFarthestAloneIsSetAsideSinceItMayHaveDrawnTheOtherOff() {
    Lesson made = new Lesson(sound(6, TRUTH, U));
    made.costs.put(1, List.of(MUCH / 4, USUAL));
    made.costs.put(4, List.of(MUCH));
    List<ClassMember<Fit>> members = made.run().members();
    assertThat(out(members)).containsExactly(4);
    heard(made, members, List.of(0, 1, 2, 3, 5), 4);
  }

  @Test
  void twoThatStandOutAreSetAsideOneAfterTheOther() {
    Lesson made = new Lesson(sound(6, TRUTH, U));
    made.costs.put(1, List.of(MUCH));
    made.costs.put(4, List.of(MUCH / 4));
    List<ClassMember<Fit>> members = made.run().members();
    assertThat(out(members)).containsExactly(1, 4);
    heard(made, members, List.of(0, 2, 3, 5), 5);
    assertThat(members.get(1).standsOut().orElseThrow().deviations())
        .isGreaterThan(members.get(4).standsOut().orElseThrow().deviations());
  }

  @Test
  void aBallThatDiffersByItselfIsSetAsideBeforeAnyRound() {
    List<SessionShown> sessions = sound(5, TRUTH, U);
    sessions.set(3, session(TRUTH, off("conduction", -0.4), U));
    Lesson made = new Lesson(sessions);
    List<ClassMember<Fit>> members = made.run().members();
    assertThat(out(members)).containsExactly(3);
    assertThat(members.get(3).standsOut().orElseThrow().what()).isEqualTo("CONVECTION");
    keepsItsOwn(made, members, 3);
    assertThat(made.asked).doesNotContain(3);
    heard(made, members, List.of(0, 1, 2, 4), 3);
  }

  @Test
  void aBallThatDiffersOnceTheOthersAreHeardIsSetAsideThen() {
    List<SessionShown> sessions = sound(6, TRUTH, U);
    sessions.set(1, session(TRUTH, off("conduction", -0.4), U));
    Lesson made = new Lesson(sessions);
    made.afterOneRound.put(3, session(TRUTH, off("leads", 4), U));
    List<ClassMember<Fit>> members = made.run().members();
    assertThat(out(members)).containsExactly(1, 3);
    assertThat(members.get(3).standsOut().orElseThrow().what()).isEqualTo("LEADS");
    keepsItsOwn(made, members, 3);
    assertThat(made.asked).filteredOn(i -> i == 3).hasSize(1);
    heard(made, members, List.of(0, 2, 4, 5), 4);
  }

  @Test
  void oneThatIsLeftHasNobodyToHear() {
    Lesson made = new Lesson(sound(3, TRUTH, U));
    made.costs.put(0, List.of(MUCH));
    made.costs.put(2, List.of(MUCH / 4));
    List<ClassMember<Fit>> members = made.run().members();
    assertThat(out(members)).containsExactly(0, 2);
    assertThat(made.asked).containsExactly(0, 1, 2, 1, 2);
    keepsItsOwn(made, members, 1);
  }
}
