package faintwind.job.live;

import faintwind.message.Problem;

/**
 * Something that happened to a live recording.
 *
 * @param kind what
 * @param problem the same in words, as a warning
 */
public record LiveNews(Kind kind, Problem problem) {

  /** What may happen. */
  public enum Kind {
    /** The source is there. */
    CONNECTED,
    /** The record has a break here; the next row tells it too. */
    GAP,
    /** A line could not be read, or a row was left out; said once for each kind in a while. */
    UNREADABLE,
    /** Somebody else sends too, and is not listened to. */
    OTHER_SENDER,
    /** The source went away and is tried again. */
    RECONNECTING,
    /** Nothing more will come. */
    ENDED
  }
}
