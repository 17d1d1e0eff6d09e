package faintwind.ui.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What to do now: the Next line's content.
 *
 * @param mark state of what the sentence speaks of
 * @param sentence one sentence, verb first
 * @param detail second line in small type; empty where there is none
 * @param act the one filled button; empty while it is not time for it
 * @param others outlined buttons before it, rarely more than one
 */
public record Next(Mark mark, String sentence, String detail, Optional<Act> act, List<Act> others) {
  public Next {
    others = List.copyOf(others);
  }

  /** A sentence without any button. */
  public static Next say(Mark mark, String sentence) {
    return new Next(mark, sentence, "", Optional.empty(), List.of());
  }

  /** A sentence with the filled button. */
  public static Next say(Mark mark, String sentence, Act act) {
    return new Next(mark, sentence, "", Optional.of(act), List.of());
  }

  public Next withDetail(String text) {
    return new Next(mark, sentence, text, act, others);
  }

  public Next withOther(Act other) {
    List<Act> all = new ArrayList<>(others);
    all.add(other);
    return new Next(mark, sentence, detail, act, all);
  }
}
