package hurdline.simulation.activity;

import hurdline.compiled.CampaignHours;
import hurdline.compiled.PaidShift;
import hurdline.event.FutureEvents;
import hurdline.measure.EventKind;
import hurdline.plant.SeasonEntry.Campaign;
import hurdline.plant.SeasonEntry.StandDown;
import hurdline.simulation.yard.Hauling;
import hurdline.simulation.yard.Stacking;
import java.util.Arrays;

/** Crews sent home while the yard is empty: looked at when a shift starts, and never in between. */
final class CrewSendHome {
  private final ReplicationState present;
  private final Feeding feeding;
  private final Stacking stacking;
  private final Hauling hauling;
  private final CampaignHours[] campaign;
  private final int[] line; // [campaign]
  private final StandDown[] rule; // [campaign] null where the crew stays
  private final boolean[][] sentHome; // [campaign][shift]
  private final int[] started; // [campaign] shifts that have started
  private final boolean[] away; // [campaign]
  final CrewAttendance attendance;

  CrewSendHome(
      ReplicationState present,
      Feeding feeding,
      Stacking stacking,
      Hauling hauling,
      CampaignHours[] campaign,
      int[] line) {
    this.present = present;
    this.feeding = feeding;
    this.stacking = stacking;
    this.hauling = hauling;
    this.campaign = campaign;
    this.line = line;
    rule = new StandDown[campaign.length];
    sentHome = new boolean[campaign.length][];
    for (int c = 0; c < campaign.length; c++) {
      Campaign entry = (Campaign) present.layout.plant.season().get(campaign[c].entry());
      rule[c] = entry.standDown().orElse(null);
      sentHome[c] = new boolean[campaign[c].shifts().size()];
    }
    started = new int[campaign.length];
    away = new boolean[campaign.length];
    attendance = new CrewAttendance(present, campaign);
  }

  void reset() {
    Arrays.fill(started, 0);
    Arrays.fill(away, false);
    attendance.reset();
    for (boolean[] shifts : sentHome) {
      Arrays.fill(shifts, false);
    }
  }

  /**
   * Some shift may start now.
   *
   * @param endedS [campaign] when each has ended
   */
  void look(double[] endedS) {
    for (int c = 0; c < campaign.length; c++) {
      while (rule[c] != null && started[c] < sentHome[c].length && shift(c).fromS() <= now()) {
        sentHome[c][started[c]++] = decide(c);
      }
    }
    attendance.look((c, k) -> !sentHome[c][k] && campaign[c].shifts().get(k).fromS() < endedS[c]);
  }

  private PaidShift shift(int c) {
    return campaign[c].shifts().get(started[c]);
  }

  private double now() {
    return present.nowS + FutureEvents.instantS();
  }

  private boolean decide(int c) {
    int l = line[c];
    int here = feeding.stock.onTableAndFeeder(l);
    boolean more = false;
    for (int form : present.layout.forms[present.layout.crop[l]]) {
      here += stacking.mayBeFed(form);
      more |= hauling.moreToCome(form, present.nowS);
    }
    boolean was = away[c];
    away[c] = here < (was ? rule[c].backAt() : rule[c].below()) && more;
    if (away[c] != was) {
      present.note(
          campaign[c].line(), away[c] ? EventKind.CREW_SENT_HOME : EventKind.CREW_BACK, here);
    }
    return away[c];
  }

  /** Whether the shift that has started last, and is not over, is not worked. */
  boolean isAway(int c) {
    int last = started[c] - 1;
    return attendance.isShort(c)
        || last >= 0 && sentHome[c][last] && present.nowS < campaign[c].shifts().get(last).toS();
  }

  boolean isSentHome(int c, int shift) {
    return sentHome[c][shift];
  }
}
