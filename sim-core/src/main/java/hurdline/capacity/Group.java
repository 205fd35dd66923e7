package hurdline.capacity;

import java.util.List;

/**
 * Machines that run and stop as one: a machine alone, or all of a stretch, between which no bin
 * lies.
 *
 * @param members in order of flow
 * @param fed whether the feeder is among them, so that lifts to its table count
 * @param perLineHour its hours over the scheduled hours of the line
 */
record Group(List<Member> members, boolean fed, double perLineHour) {

  /**
   * @param heads whose material counts
   */
  record Member(int machine, int[] heads) {}
}
