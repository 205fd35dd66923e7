package hurdline.plant;

import hurdline.plant.Calendar.Shift;
import hurdline.plant.SeasonEntry.Campaign;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;

/** Campaigns, changeovers, crews and hours of their own. */
final class SeasonRules {
  private SeasonRules() {}

  /** A campaign with its place in the season. */
  private record Placed(String path, Campaign campaign) {}

  static void check(Plant plant, Names names, Problems found) {
    List<Placed> campaigns = new ArrayList<>();
    Campaign last = null;
    for (int i = 0; i < plant.season().size(); i++) {
      String path = "season." + i;
      SeasonEntry entry = plant.season().get(i);
      if (entry instanceof Campaign campaign) {
        campaign(path, campaign, plant, names, found);
        campaigns.add(new Placed(path, campaign));
        last = campaign;
      } else if (last != null) {
        SeasonEntry.Changeover changeover = (SeasonEntry.Changeover) entry;
        changeover(path + ".changeover", changeover, last, plant, names, found);
        TaskRules.check(path, changeover, found);
      } else {
        found.add(
            path + ".changeover",
            "a changeover before any campaign",
            "a campaign before it, on whose working days it falls");
      }
    }
    overlaps(campaigns, names, found);
    crews(plant, names, found);
    ownHours(plant, names, found);
  }

  private static void changeover(
      String path,
      SeasonEntry.Changeover changeover,
      Campaign before,
      Plant plant,
      Names names,
      Problems found) {
    List<Shift> shifts = known(before, names);
    LocalDate to = before.to();
    boolean judged = changeover.days() > 0 && !to.equals(LocalDate.MIN) && !shifts.isEmpty();
    if (judged && !plant.calendar().anyStartsAfter(to, shifts)) {
      found.add(
          path,
          "there is no shift to do it in: none of "
              + String.join(", ", before.shifts())
              + " starts after "
              + to
              + " in the calendar",
          "a campaign before it that ends earlier, or a calendar that goes on");
    }
  }

  private static void campaign(
      String path, Campaign campaign, Plant plant, Names names, Problems found) {
    found.known(path + ".line", campaign.line(), names.lines.keySet(), "no line", "a line");
    dates(path, campaign.from(), campaign.to(), "a campaign", plant.calendar(), found);
    shifts(path + ".shifts", campaign.shifts(), names, found);
  }

  private static void dates(
      String path, LocalDate from, LocalDate to, String kind, Calendar calendar, Problems found) {
    boolean bothKnown = !from.equals(LocalDate.MIN) && !to.equals(LocalDate.MIN);
    if (bothKnown && to.isBefore(from)) {
      found.add(
          path + ".to",
          to + " is before " + from + ", its first day",
          "a date from " + from + " on");
    }
    inside(path + ".from", from, kind, calendar, found);
    inside(path + ".to", to, kind, calendar, found);
  }

  private static void inside(
      String path, LocalDate date, String kind, Calendar calendar, Problems found) {
    boolean isHorizon = !calendar.to().isBefore(calendar.from()); // else said of the calendar
    if (isHorizon
        && !date.equals(LocalDate.MIN)
        && (date.isBefore(calendar.from()) || date.isAfter(calendar.to()))) {
      found.add(
          path,
          kind + " outside the calendar: " + date,
          "a date from " + calendar.from() + " to " + calendar.to());
    }
  }

  private static void shifts(String path, List<String> shifts, Names names, Problems found) {
    if (names.shifts.isEmpty()) {
      return; // told once, of the calendar
    }
    for (int i = 0; i < shifts.size(); i++) {
      found.known(
          path + "." + i,
          shifts.get(i),
          names.shifts.keySet(),
          "no shift",
          "a shift of the calendar");
    }
    if (new HashSet<>(shifts).size() < shifts.size()) {
      found.add(path, "a shift stands here twice", "each shift once");
      return;
    }
    List<Shift> known = shifts.stream().map(names.shifts::get).filter(Objects::nonNull).toList();
    List<String> pair = CalendarRules.overlapping(known);
    if (!pair.isEmpty()) {
      found.add(
          path,
          "the shifts \"" + pair.get(0) + "\" and \"" + pair.get(1) + "\" overlap",
          "shifts of a line that follow one another");
    }
  }

  private static void overlaps(List<Placed> campaigns, Names names, Problems found) {
    for (int i = 0; i < campaigns.size() && !found.isFull(); i++) {
      for (int j = 0; j < i; j++) {
        Set<String> shared =
            shared(campaigns.get(i).campaign(), campaigns.get(j).campaign(), names);
        if (!shared.isEmpty()
            && atOnce(campaigns.get(i).campaign(), campaigns.get(j).campaign(), names)) {
          found.add(
              campaigns.get(i).path(),
              "the campaign overlaps that of "
                  + campaigns.get(j).path()
                  + ", and both use "
                  + String.join(", ", shared),
              "campaigns one after the other where lines share a machine");
        }
      }
    }
  }

  private static boolean atOnce(Campaign a, Campaign b, Names names) {
    if (!a.from().isAfter(b.to()) && !b.from().isAfter(a.to())) {
      return !a.from().equals(LocalDate.MIN) && !b.from().equals(LocalDate.MIN);
    }
    return a.from().isAfter(b.to()) ? nightRunsOn(b, a, names) : nightRunsOn(a, b, names);
  }

  /**
   * Whether a night that begins on the last date runs into a shift of the next campaign's first
   * date.
   */
  private static boolean nightRunsOn(Campaign first, Campaign next, Names names) {
    if (first.to().equals(LocalDate.MIN) || !next.from().equals(first.to().plusDays(1))) {
      return false;
    }
    int nightEndS = 0;
    for (Shift shift : known(first, names)) {
      boolean runs =
          shift.toS() <= shift.fromS() && shift.days().contains(first.to().getDayOfWeek());
      nightEndS = runs ? Math.max(nightEndS, shift.toS()) : nightEndS;
    }
    int ends = nightEndS;
    return known(next, names).stream()
        .anyMatch(
            shift -> shift.days().contains(next.from().getDayOfWeek()) && shift.fromS() < ends);
  }

  private static List<Shift> known(Campaign campaign, Names names) {
    return campaign.shifts().stream().map(names.shifts::get).filter(Objects::nonNull).toList();
  }

  private static Set<String> shared(Campaign a, Campaign b, Names names) {
    Set<String> shared = machines(names.lines.get(a.line()));
    shared.retainAll(machines(names.lines.get(b.line())));
    return shared;
  }

  private static Set<String> machines(Line line) {
    Set<String> machines = new TreeSet<>();
    if (line != null) {
      line.steps().forEach(step -> machines.add(step.machine()));
      machines.addAll(line.alongside());
    }
    return machines;
  }

  private static void crews(Plant plant, Names names, Problems found) {
    for (Crew crew : plant.crews()) {
      String path = "crews." + crew.line();
      found.known(path, crew.line(), names.lines.keySet(), "no line", "a line");
      if (names.shifts.isEmpty()) {
        continue; // told once, of the calendar
      }
      found.known(
          path + "." + crew.shift(),
          crew.shift(),
          names.shifts.keySet(),
          "no shift",
          "a shift of the calendar");
    }
  }

  private static void ownHours(Plant plant, Names names, Problems found) {
    for (Line line : plant.lines()) {
      for (Step step : line.steps()) {
        step.ownHours()
            .ifPresent(
                own -> ownHours(Names.path(line, step) + ".own_hours", own, plant, names, found));
      }
    }
  }

  private static void ownHours(
      String path, Step.OwnHours own, Plant plant, Names names, Problems found) {
    LocalDate from = own.from().orElse(LocalDate.MIN);
    LocalDate to = own.to().orElse(LocalDate.MIN);
    dates(path, from, to, "hours of its own", plant.calendar(), found);
    shifts(path + ".shifts", own.shifts(), names, found);
  }
}
