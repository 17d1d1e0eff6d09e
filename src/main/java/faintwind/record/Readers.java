package faintwind.record;

import faintwind.record.Event.CautionAcknowledged;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Who of those who build an instrument together has read a caution. A name counts once, however it
 * is written; only that of the pair itself, the instrument's, stands for each of its members in
 * turn, since nobody has to give a name.
 */
public final class Readers {
  private Readers() {}

  /**
   * Their names as they were written, each once.
   *
   * @param pair name of the instrument
   */
  public static List<String> of(String pair, List<Standing<CautionAcknowledged>> acknowledged) {
    List<String> readers = new ArrayList<>();
    for (Standing<CautionAcknowledged> line : acknowledged) {
      String who = line.who().strip();
      if (!who.isEmpty() && (isPair(pair, who) || !hasRead(readers, who))) {
        readers.add(who);
      }
    }
    return readers;
  }

  /** Whether a name is that of the pair. */
  public static boolean isPair(String pair, String who) {
    return Classroom.isSame(pair, who)
        || Stream.of(pair.split(",")).anyMatch(part -> Classroom.isSame(part, who));
  }

  /** Whether somebody is among them. */
  public static boolean hasRead(List<String> readers, String who) {
    return readers.stream().anyMatch(reader -> Classroom.isSame(reader, who));
  }
}
