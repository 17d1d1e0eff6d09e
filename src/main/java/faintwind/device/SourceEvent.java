package faintwind.device;

import faintwind.calibration.live.LiveGap;
import faintwind.calibration.live.LiveSample;
import java.time.Duration;
import java.time.Instant;

/** What a source delivers, with the time it arrived. */
public sealed interface SourceEvent {
  /** When it arrived. */
  Instant received();

  /**
   * A line of text, as the logger wrote it.
   *
   * @param text without its end of line
   * @param whole whether its beginning may be missing
   */
  record Line(String text, Wholeness whole, Instant received) implements SourceEvent {}

  /** Whether a line is all there. */
  enum Wholeness {
    WHOLE,
    /** The first line of a port on which the logger may have been in the middle of a line. */
    PERHAPS_TORN
  }

  /**
   * A reading that needs no further reading of text: typed, or from the virtual instrument.
   *
   * @param sample the reading
   */
  record Reading(LiveSample sample, Instant received) implements SourceEvent {}

  /** The source is there: at first, or again. */
  record Connected(Instant received) implements SourceEvent {}

  /**
   * Something was lost here.
   *
   * @param gap why
   */
  record Lost(LiveGap gap, Instant received) implements SourceEvent {}

  /**
   * The source went away; it is tried again after a wait.
   *
   * @param why in the system's words
   * @param retryIn until the next try
   */
  record Reconnecting(String why, Duration retryIn, Instant received) implements SourceEvent {}

  /**
   * Somebody else sends to the port; it is not listened to.
   *
   * @param other who
   * @param kept to whom is listened
   */
  record OtherSender(String other, String kept, Instant received) implements SourceEvent {}

  /** Nothing more will come. */
  record Ended(Instant received) implements SourceEvent {}
}
