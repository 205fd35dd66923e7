package hurdline.simulation.activity;

import hurdline.compiled.BinHours;
import hurdline.compiled.CampaignHours;
import hurdline.compiled.ChangeoverHours;
import hurdline.compiled.CompiledLines;
import hurdline.compiled.PaidShift;
import hurdline.compiled.Roster;
import hurdline.compiled.Stretch;
import hurdline.compiled.TimeWindows;
import hurdline.event.FutureEvents;
import hurdline.measure.EventKind;
import hurdline.simulation.yard.Hauling;
import hurdline.simulation.yard.Stacking;
import java.util.Arrays;
import java.util.List;

/**
 * Crews and campaigns: which heads are in their hours, which machines are on duty, in use, in
 * changeover; and the end of a campaign, by its date or because the crop is through.
 *
 * <p>All instants at which the calendar changes anything are known beforehand; at each of them the
 * whole state is worked out anew. There are a few thousand in a year.
 *
 * <p>One file because campaigns, shifts and own hours open and close the same machines at the same
 * instants.
 */
public final class Rostering {
  private static final int NONE = -1;

  private final ReplicationState present;
  private final CompiledLines layout;
  private final Roster roster;
  private final Filling filling;
  private final Feeding feeding;
  private final Stopping stopping;
  private final Hauling hauling;
  private final double[] boundary;
  private final int campaigns;
  private final CampaignHours[] campaign;
  private final int[] campaignLine;
  private final double[] lastShiftEndS;
  private final BinHours[] own; // by head, null where the line's hours hold
  private final boolean[][] uses; // [line][machine]
  private final boolean[][] headsMachines; // [head][machine]
  private final double[] endedS; // by campaign, +inf while it has not ended
  private final double[] releasedS; // when an ended campaign gives up its machines
  private final boolean[] begun;
  private final boolean[] followsChangeover; // [campaign]
  private final int[] current; // [line] campaign that has its machines
  private final TimeWindows[] receiving; // [crop]
  private final CrewSendHome standingDown;
  private final LineCounters.Holders holders = this::hasNow;
  private int next;

  /** [machine] whether a campaign or own hours use it, and whether it is in a changeover. */
  final boolean[] used;

  final boolean[] inChangeover;

  /** [machine] the crop that has it, also off shift; below 0 while none has. */
  final int[] serves;

  /** [line] whether its crop is through and its bins run empty. */
  final boolean[] cropDone;

  /** When each campaign ended. */
  public final LeftOver leftOver;

  public Rostering(
      ReplicationState present,
      Filling filling,
      Feeding feeding,
      Stacking stacking,
      Stopping stopping,
      Hauling hauling) {
    this.present = present;
    this.filling = filling;
    this.feeding = feeding;
    this.stopping = stopping;
    this.hauling = hauling;
    layout = present.layout;
    roster = present.roster;
    campaign = roster.campaigns().toArray(CampaignHours[]::new);
    campaigns = campaign.length;
    campaignLine =
        Arrays.stream(campaign).mapToInt(c -> layout.naming.lines.index(c.line())).toArray();
    lastShiftEndS =
        Arrays.stream(campaign)
            .mapToDouble(
                c -> c.shifts().stream().mapToDouble(PaidShift::toS).max().orElse(c.beginS()))
            .toArray();
    own = new BinHours[layout.heads];
    headsMachines = new boolean[layout.heads][layout.machines];
    uses = new boolean[layout.lines][layout.machines];
    for (int h = 0; h < layout.heads; h++) {
      setUp(h);
    }
    for (int l = 0; l < layout.lines; l++) {
      for (int m : layout.alongside[l]) {
        uses[l][m] = true;
      }
    }
    endedS = new double[campaigns];
    releasedS = new double[campaigns];
    begun = new boolean[campaigns];
    followsChangeover = new boolean[campaigns];
    roster.changeovers().stream()
        .filter(changeover -> changeover.fromS() < changeover.toS())
        .forEach(changeover -> changeover.after().ifPresent(c -> followsChangeover[c] = true));
    leftOver = new LeftOver(layout, hauling, feeding.stock, campaigns);
    current = new int[layout.lines];
    used = new boolean[layout.machines];
    inChangeover = new boolean[layout.machines];
    serves = new int[layout.machines];
    cropDone = new boolean[layout.lines];
    receiving = new TimeWindows[layout.naming.crops.count()];
    for (int c = 0; c < receiving.length; c++) {
      receiving[c] = roster.receiving(layout.naming.crops.name(c));
    }
    standingDown = new CrewSendHome(present, feeding, stacking, hauling, campaign, campaignLine);
    boundary = CalendarInstants.of(roster, campaign, own, receiving);
  }

  private void setUp(int head) {
    Stretch stretch = layout.stretch[head];
    int line = layout.headLine[head];
    for (int m : stretch.machine) {
      if (m >= 0) {
        headsMachines[head][m] = true;
        uses[line][m] = true;
      }
    }
    if (layout.headBin[head] >= 0) {
      own[head] =
          roster
              .ownHours(
                  layout.naming.lines.name(line), layout.naming.bins.name(layout.headBin[head]))
              .orElse(null);
    }
  }

  public void reset() {
    Arrays.fill(endedS, Double.POSITIVE_INFINITY);
    Arrays.fill(releasedS, Double.POSITIVE_INFINITY);
    Arrays.fill(begun, false);
    leftOver.reset();
    Arrays.fill(current, NONE);
    Arrays.fill(used, false);
    Arrays.fill(inChangeover, false);
    Arrays.fill(cropDone, false);
    standingDown.reset();
    next = 0;
    present.pending.set(present.slots.calendar, boundary[0]);
  }

  /** The calendar's next instant. */
  public double nextS() {
    return next < boundary.length ? boundary[next] : Double.POSITIVE_INFINITY;
  }

  /** The calendar changes something, or may. */
  public void due() {
    while (next < boundary.length && boundary[next] <= present.nowS + FutureEvents.instantS()) {
      next++;
    }
    present.pending.set(present.slots.calendar, nextS());
    for (int c = 0; c < campaigns; c++) {
      if (endedS[c] == Double.POSITIVE_INFINITY && present.nowS >= lastShiftEndS[c]) {
        end(c, lastShiftEndS[c]);
      }
    }
    workOut();
  }

  private void workOut() {
    double now = present.nowS;
    filling.countUp();
    for (int l = 0; l < layout.lines; l++) {
      current[l] = NONE;
    }
    for (int c = 0; c < campaigns; c++) {
      if (now >= campaign[c].beginS() && now < campaign[c].untilS() && now < releasedS[c]) {
        current[campaignLine[c]] = c;
        if (!begun[c]) {
          begin(c);
        }
      }
    }
    standingDown.look(endedS);
    for (int l = 0; l < layout.lines; l++) {
      int c = current[l];
      boolean open =
          c != NONE && now < endedS[c] && campaign[c].hours().in(now) && !standingDown.isAway(c);
      openLine(l, open);
    }
    for (int h = 0; h < layout.heads; h++) {
      present.network.asked.on[h] =
          own[h] == null
              ? present.lineHours.is(layout.headLine[h])
              : own[h].hours().in(now) && !othersRun(h);
    }
    machines(now);
    for (int c = 0; c < receiving.length; c++) {
      present.resources.open(present.gates.receiving(c), receiving[c].in(now), now);
    }
    present.flowsChanged = true;
    present.causesChanged = true;
    present.allChanged = true;
  }

  private void begin(int c) {
    begun[c] = true;
    int l = campaignLine[c];
    cropDone[l] = false;
    setRunsEmpty(l, false);
    feeding.lineTakesOver(l);
    filling.purge.begins(c, l, followsChangeover[c]);
    present.note(campaign[c].line(), EventKind.CAMPAIGN_BEGINS, campaign[c].ordinal());
  }

  private void openLine(int l, boolean open) {
    if (present.lineHours.set(l, open, present.nowS)) {
      present.resources.open(present.gates.line(l), open, present.nowS);
      present.note(
          layout.naming.lines.name(l),
          open ? EventKind.HOURS_BEGIN : EventKind.HOURS_END,
          Double.NaN);
    }
  }

  /** Whether a running campaign of another line uses a machine of this head. */
  private boolean othersRun(int head) {
    for (int l = 0; l < layout.lines; l++) {
      if (l != layout.headLine[head] && current[l] != NONE && present.nowS < endedS[current[l]]) {
        for (int m = 0; m < layout.machines; m++) {
          if (uses[l][m] && headsMachines[head][m]) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private void machines(double now) {
    for (int m = 0; m < layout.machines; m++) {
      boolean duty = false;
      int has = NONE;
      for (int h : layout.headsOf[m]) {
        if (present.network.asked.on[h]) {
          if (!duty) {
            present.counters.line[m] = layout.headLine[h];
          }
          duty = true;
        }
        if (own[h] != null && own[h].owned().in(now)) {
          has = layout.headLine[h];
        }
      }
      for (int l : layout.linesAlongside[m]) {
        if (present.lineHours.is(l)) {
          if (!duty) {
            present.counters.line[m] = l;
          }
          duty = true;
        }
      }
      for (int l = 0; l < layout.lines; l++) {
        if (uses[l][m] && current[l] != NONE) {
          has = l;
        }
      }
      used[m] = has != NONE;
      int line = duty ? present.counters.line[m] : has;
      serves[m] = line == NONE ? NONE : layout.crop[line];
      inChangeover[m] = changesOver(m, now);
      duty(m, duty);
    }
    stopping.linesChanged(holders);
  }

  /** Whether a campaign of the line, or the own hours of one of its bins, have a machine now. */
  private boolean hasNow(int line, int m) {
    if (uses[line][m] && current[line] != NONE) {
      return true;
    }
    for (int h : layout.headsOf[m]) {
      if (layout.headLine[h] == line && own[h] != null && own[h].owned().in(present.nowS)) {
        return true;
      }
    }
    return false;
  }

  /**
   * The one line in the hours of a campaign or a bin's draw; past the last for several, below 0 for
   * none.
   */
  int lineAtWork() {
    int found = NONE;
    for (int l = 0; l < layout.lines; l++) {
      boolean works = present.lineHours.is(l);
      for (int h = 0; h < layout.heads && !works; h++) {
        works = layout.headLine[h] == l && present.network.asked.on[h];
      }
      if (works) {
        found = found == NONE ? l : layout.lines;
      }
    }
    return found;
  }

  private boolean changesOver(int m, double now) {
    for (int k = 0; k < roster.changeovers().size(); k++) { // an iterator would be allocated
      ChangeoverHours c = roster.changeovers().get(k);
      boolean on = now >= c.fromS() && now < c.toS();
      if (on && uses[campaignLine[c.before()]][m]
          || on && c.after().isPresent() && uses[campaignLine[c.after().getAsInt()]][m]) {
        return true;
      }
    }
    return false;
  }

  private void duty(int m, boolean duty) {
    if (present.counters.duty.set(m, duty, present.nowS)) {
      present.resources.open(present.gates.machine(m), duty, present.nowS);
      stopping.dutyChanged(m);
      filling.dutyChanged(m, duty);
    }
  }

  /** Looks whether a line's crop is through, and whether its bins have run empty after that. */
  public boolean lookForRunOut() {
    boolean ended = false;
    for (int l = 0; l < layout.lines; l++) {
      int c = current[l];
      if (c != NONE && endedS[c] == Double.POSITIVE_INFINITY) {
        if (cropDone[l] != feeding.isThrough(l)) {
          cropDone[l] = !cropDone[l];
          setRunsEmpty(l, cropDone[l]);
        }
        if (cropDone[l] && binsAreEmpty(l)) {
          end(c, present.nowS);
          ended = true;
        }
      }
      if (c != NONE) {
        feeding.tellWhy(l, cropDone[l]);
      }
    }
    if (ended) {
      workOut();
    }
    return ended;
  }

  private void setRunsEmpty(int l, boolean runsEmpty) {
    present.flowsChanged = true;
    present.allChanged = true;
    for (int h = 0; h < layout.heads; h++) {
      if (layout.headLine[h] == l && layout.headBin[h] >= 0) {
        present.network.asked.runsEmpty[layout.headBin[h]] = runsEmpty;
      }
    }
  }

  private boolean binsAreEmpty(int l) {
    for (int h = 0; h < layout.heads; h++) {
      if (layout.headLine[h] == l
          && layout.headBin[h] >= 0
          && !present.network.isEmpty(layout.headBin[h])) {
        return false;
      }
    }
    return true;
  }

  private void end(int c, double atS) {
    endedS[c] = atS;
    int l = campaignLine[c];
    leftOver.count(c, l);
    filling.purge.ends(c);
    feeding.withdrawLifts(l);
    // by its date a campaign keeps its machines to its last midnight; by a run-out to the end of
    // the shift
    releasedS[c] = atS >= lastShiftEndS[c] ? campaign[c].untilS() : endOfShift(c, atS);
    present.note(campaign[c].line(), EventKind.CAMPAIGN_ENDS, leftOver.all(c));
  }

  private double endOfShift(int c, double atS) {
    double end = atS;
    for (PaidShift shift : campaign[c].shifts()) {
      if (shift.fromS() <= atS && atS < shift.toS()) {
        end = Math.max(end, shift.toS());
      }
    }
    return end;
  }

  public int campaigns() {
    return campaigns;
  }

  public CampaignHours campaign(int c) {
    return campaign[c];
  }

  public int lineOf(int c) {
    return campaignLine[c];
  }

  /** Day of the horizon, from 1, on which the campaign's last shift began; NaN where none did. */
  public double endedDay(int c) {
    List<PaidShift> shifts = campaign[c].shifts();
    double last = Double.NaN;
    for (int k = 0; k < shifts.size(); k++) {
      last = isWorked(c, k) ? shifts.get(k).day() + 1 : last;
    }
    return last;
  }

  /**
   * Whether a shift began before its campaign ended, so that its crew is paid for the whole of it.
   */
  boolean isWorked(int c, int shift) {
    return campaign[c].shifts().get(shift).fromS() < endedS[c]
        && !isSentHome(c, shift)
        && !standingDown.attendance.isShort(c, shift);
  }

  /** Who came to the shifts of campaigns. */
  CrewAttendance attendance() {
    return standingDown.attendance;
  }

  /** Whether a shift of a campaign was not worked because the yard was empty. */
  boolean isSentHome(int c, int shift) {
    return standingDown.isSentHome(c, shift) && campaign[c].shifts().get(shift).fromS() < endedS[c];
  }
}
