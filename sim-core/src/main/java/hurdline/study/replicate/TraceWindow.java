package hurdline.study.replicate;

import java.time.LocalDateTime;

/**
 * What of a run is to be shown event by event.
 *
 * @param replication counts from 1
 * @param from first instant, local time
 * @param to last instant
 */
public record TraceWindow(int replication, LocalDateTime from, LocalDateTime to) {
  public TraceWindow {
    if (!(replication >= 1)) {
      throw new IllegalArgumentException("replication is " + replication + "; expected from 1 on");
    }
  }
}
