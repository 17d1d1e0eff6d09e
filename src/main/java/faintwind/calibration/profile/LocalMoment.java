package faintwind.calibration.profile;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;

/**
 * Finds the moment that a local date and time mean in a zone, one after the other. Where clocks are
 * set back an hour comes twice: the order of the readings tells which of the two is meant, the
 * first that does not lie before the reading before it. Where clocks are put forward an hour does
 * not come at all. Mutable; for one log.
 */
final class LocalMoment {
  /** A reading this much before the last is a slip of the logger, not an hour that comes again. */
  private static final Duration SLIP = Duration.ofSeconds(60);

  private final ZoneId zone;
  private Optional<OffsetDateTime> last = Optional.empty();

  LocalMoment(ZoneId zone) {
    this.zone = zone;
  }

  /** The moment; empty where the clocks of the zone never showed it. */
  Optional<OffsetDateTime> of(LocalDateTime local) {
    List<ZoneOffset> offsets = zone.getRules().getValidOffsets(local);
    if (offsets.isEmpty()) {
      return Optional.empty();
    }
    // the offset of summer comes first, and is the earlier moment
    OffsetDateTime found = local.atOffset(offsets.get(offsets.size() - 1));
    for (int i = offsets.size() - 1; i >= 0; i--) {
      OffsetDateTime at = local.atOffset(offsets.get(i));
      boolean late = last.isEmpty() || !at.isBefore(last.get().minus(SLIP));
      found = late ? at : found;
    }
    last = Optional.of(found);
    return Optional.of(found);
  }

  /** Whether the clocks of the zone show this twice. */
  boolean comesTwice(LocalDateTime local) {
    return zone.getRules().getValidOffsets(local).size() > 1;
  }
}
