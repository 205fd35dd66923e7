package hurdline.study.season;

import hurdline.answer.SeasonAnswer.Entry;
import hurdline.answer.SeasonAnswer.Task;
import hurdline.compiled.CampaignHours;
import hurdline.compiled.ChangeoverHours;
import hurdline.compiled.Roster;
import hurdline.measure.Measure;
import hurdline.plant.SeasonEntry.Campaign;
import hurdline.plant.SeasonEntry.Changeover;
import hurdline.plant.TaskPlan;
import hurdline.simulation.CompiledPlant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Campaigns and changeovers as they lie in the calendar once each has waited for the one before it.
 */
final class SeasonEntries {
  private static final double HOUR_S = 3600;

  private final CompiledPlant stage;
  private final Roster roster;

  SeasonEntries(CompiledPlant stage) {
    this.stage = stage;
    roster = stage.roster();
  }

  /** In the season's order; what the calendar leaves nothing of is left out. */
  List<Entry> entries() {
    Map<Integer, Entry> inOrder = new TreeMap<>();
    for (CampaignHours campaign : roster.campaigns()) {
      if (campaign.beginS() < campaign.untilS()) {
        inOrder.put(campaign.entry(), entry(campaign, ended(campaign)));
      }
    }
    for (ChangeoverHours changeover : roster.changeovers()) {
      if (changeover.fromS() < changeover.toS()) {
        inOrder.put(changeover.entry(), entry(changeover));
      }
    }
    return new ArrayList<>(inOrder.values());
  }

  /**
   * As the measures name it: the only campaign of a line by the line alone, several by their
   * number.
   */
  private String ended(CampaignHours campaign) {
    String line = campaign.line();
    boolean isOnly =
        roster.campaigns().stream().filter(each -> each.line().equals(line)).count() == 1;
    return isOnly
        ? Measure.SEASON_ENDED.of(line)
        : Measure.SEASON_NTH_ENDED.of(line, String.valueOf(campaign.ordinal()));
  }

  private Entry entry(CampaignHours hours, String ended) {
    Campaign campaign = (Campaign) stage.plant().season().get(hours.entry());
    LocalDate from = roster.date(roster.dayAt(hours.beginS()));
    boolean moved = hours.beginS() > hours.plannedS();
    return new Entry(
        campaign.line(),
        from,
        campaign.to(),
        campaign.shifts(),
        0,
        moved ? campaign.from().toString() : "",
        List.of(),
        ended);
  }

  Entry entry(ChangeoverHours hours) {
    LocalDate last = roster.date(roster.dayAt(hours.toS() - 1));
    return new Entry(
        "",
        roster.date(roster.dayAt(hours.fromS())),
        last,
        List.of(),
        hours.hands(),
        "",
        tasks((Changeover) stage.plant().season().get(hours.entry())),
        "");
  }

  private static List<Task> tasks(Changeover changeover) {
    TaskPlan plan = new TaskPlan(changeover);
    List<String> critical = plan.criticalPath();
    return changeover.tasks().stream()
        .map(
            task ->
                new Task(
                    task.name(),
                    task.hands(),
                    task.after(),
                    plan.beginS(task.name()) / HOUR_S,
                    plan.endS(task.name()) / HOUR_S,
                    critical.contains(task.name())))
        .toList();
  }
}
