package hurdline.records;

import hurdline.records.DateReader.Moment;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;

/** The clock on the plant's wall, whose changes in spring and fall come from its zone. */
public final class WallClock {
  private final ZoneId zone;

  public WallClock(ZoneId zone) {
    this.zone = zone;
  }

  /** Seconds since 1970; a time that a change of the clock left out is read as much later. */
  public long epochS(LocalDateTime wall) {
    return wall.atZone(zone).toEpochSecond();
  }

  long epochS(Moment moment, LocalDate day) {
    LocalDateTime wall = moment.at(day);
    return moment.offset().map(wall::toEpochSecond).orElseGet(() -> epochS(wall));
  }

  /**
   * The same in the second of two like hours; as {@link #epochS(LocalDateTime)} where there is one.
   */
  long secondEpochS(LocalDateTime wall) {
    return wall.atZone(zone).withLaterOffsetAtOverlap().toEpochSecond();
  }

  boolean isSkipped(LocalDateTime wall) {
    return zone.getRules().getValidOffsets(wall).isEmpty();
  }

  boolean isTwice(LocalDateTime wall) {
    return zone.getRules().getValidOffsets(wall).size() > 1;
  }

  public LocalDateTime wall(double epochS) {
    return LocalDateTime.ofInstant(Instant.ofEpochSecond(Math.round(epochS)), zone);
  }
}
