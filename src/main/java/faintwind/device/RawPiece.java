package faintwind.device;

import java.time.Instant;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * One entry of a raw stream.
 *
 * @param kind what it is
 * @param at when it arrived
 * @param bytes what arrived, a character for each byte; empty for what happened to the connection
 */
record RawPiece(Kind kind, Instant at, String bytes) {

  /** What may arrive, or happen. */
  enum Kind {
    BYTES,
    /** What stood in a file before; only its header counts. */
    HEAD,
    /** A connection that begins with a whole line. */
    CONNECTED,
    /** A connection that may begin in the middle of a line. */
    CONNECTED_TORN,
    /** The connection has come back after a cut. */
    CUT,
    /** The growing file was replaced or shortened. */
    REPLACED;

    String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static Optional<Kind> of(String word) {
      return Arrays.stream(values()).filter(kind -> kind.word().equals(word)).findFirst();
    }
  }
}
