package hurdline.study.rest;

import hurdline.answer.SeasonRest.Hours;
import hurdline.plant.Calendar;
import hurdline.plant.Crew;
import hurdline.plant.Plant;
import hurdline.plant.SeasonEntry;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A line's season with a shift less or more.
 *
 * @param hours as planned, without or with the shift
 * @param shift empty as planned
 */
record ShiftChange(String line, Hours hours, String shift) {
  private static final int DAY_S = 86_400;

  /**
   * The changes that are asked of a line: a line that works two shifts or more does without the
   * last of them; one that works a single shift takes the first of the calendar's that leaves its
   * hours free and that it has a crew for, or else nobody has.
   */
  static Optional<ShiftChange> of(Plant rest, String line) {
    Optional<SeasonEntry.Campaign> longest =
        campaigns(rest, line).max(Comparator.comparingInt(campaign -> campaign.shifts().size()));
    if (longest.isEmpty()) {
      return Optional.empty();
    }
    List<String> shifts = longest.get().shifts();
    if (shifts.size() > 1) {
      return Optional.of(new ShiftChange(line, Hours.WITHOUT_SHIFT, shifts.get(shifts.size() - 1)));
    }
    return rest.calendar().shifts().stream()
        .filter(shift -> isFree(rest, line, shift))
        .min(Comparator.comparing(shift -> !hasCrew(rest, line, shift.name())))
        .map(shift -> new ShiftChange(line, Hours.WITH_SHIFT, shift.name()));
  }

  static Stream<SeasonEntry.Campaign> campaigns(Plant plant, String line) {
    return plant.season().stream()
        .filter(SeasonEntry.Campaign.class::isInstance)
        .map(SeasonEntry.Campaign.class::cast)
        .filter(campaign -> campaign.line().equals(line));
  }

  private static boolean isFree(Plant rest, String line, Calendar.Shift shift) {
    boolean isOthers =
        !hasCrew(rest, line, shift.name())
            && rest.crews().stream().anyMatch(crew -> crew.shift().equals(shift.name()));
    return !isOthers
        && campaigns(rest, line)
            .flatMap(campaign -> campaign.shifts().stream())
            .flatMap(name -> named(rest, name).stream())
            .noneMatch(own -> overlap(own, shift));
  }

  private static Optional<Calendar.Shift> named(Plant rest, String name) {
    return rest.calendar().shifts().stream().filter(of -> of.name().equals(name)).findFirst();
  }

  private static boolean overlap(Calendar.Shift one, Calendar.Shift other) {
    return Math.floorMod(other.fromS() - one.fromS(), DAY_S) < one.lengthS()
        || Math.floorMod(one.fromS() - other.fromS(), DAY_S) < other.lengthS();
  }

  private static boolean hasCrew(Plant rest, String line, String shift) {
    return rest.crews().stream()
        .anyMatch(crew -> crew.line().equals(line) && crew.shift().equals(shift));
  }

  Plant of(Plant rest) {
    List<SeasonEntry> season =
        rest.season().stream()
            .map(
                entry ->
                    entry instanceof SeasonEntry.Campaign campaign && campaign.line().equals(line)
                        ? changed(campaign)
                        : entry)
            .toList();
    return new Plant(
        rest.name(),
        rest.calendar(),
        rest.components(),
        rest.crops(),
        rest.machines(),
        rest.products(),
        rest.packages(),
        rest.stores(),
        rest.lines(),
        season,
        crews(rest),
        rest.hands(),
        rest.resources(),
        rest.yard(),
        rest.deliveries(),
        rest.baseLoads(),
        rest.money(),
        rest.options(),
        rest.plans(),
        rest.doubts(),
        rest.titles());
  }

  private SeasonEntry.Campaign changed(SeasonEntry.Campaign campaign) {
    List<String> shifts = new ArrayList<>(campaign.shifts());
    if (hours == Hours.WITHOUT_SHIFT && shifts.size() > 1) {
      shifts.remove(shift);
    } else if (hours == Hours.WITH_SHIFT) {
      shifts.add(shift);
    }
    return new SeasonEntry.Campaign(
        campaign.line(), campaign.from(), campaign.to(), shifts, campaign.standDown());
  }

  /** A shift that the line never had has as many hands as its largest. */
  private List<Crew> crews(Plant rest) {
    List<Crew> crews = new ArrayList<>(rest.crews());
    if (hours == Hours.WITH_SHIFT && !hasCrew(rest, line, shift)) {
      int hands =
          crews.stream()
              .filter(crew -> crew.line().equals(line))
              .mapToInt(Crew::hands)
              .max()
              .orElse(0);
      crews.add(new Crew(line, shift, hands));
    }
    return crews;
  }
}
