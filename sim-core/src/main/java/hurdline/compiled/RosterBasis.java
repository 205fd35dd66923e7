package hurdline.compiled;

import hurdline.plant.BaseLoad;
import hurdline.plant.Calendar;
import hurdline.plant.Delivery;
import hurdline.plant.Line;
import hurdline.plant.Money;
import hurdline.plant.Plant;
import hurdline.plant.SeasonEntry;
import hurdline.plant.Step;
import hurdline.plant.Tariff;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * All of a plant that a roster is made of: two plants with the same have the same roster.
 *
 * @param own hours that draws from bins keep for themselves, in the order of lines and steps
 * @param periods of the electricity tariff
 */
record RosterBasis(
    Calendar calendar,
    List<SeasonEntry> season,
    List<Own> own,
    List<Receiving> deliveries,
    List<Tariff.Period> periods,
    List<BaseLoad> baseLoads) {

  /** Hours that the draw from a bin keeps for itself in a line. */
  record Own(String line, String bin, Step.OwnHours hours) {}

  /** When a crop comes in. */
  record Receiving(String crop, Delivery.DayHours hours, Optional<Delivery.Loads> loads) {}

  static RosterBasis of(Plant plant) {
    return new RosterBasis(
        plant.calendar(),
        plant.season(),
        own(plant),
        plant.deliveries().stream()
            .map(delivery -> new Receiving(delivery.crop(), delivery.hours(), delivery.loads()))
            .toList(),
        plant.money().map(Money::tariff).map(Tariff::periods).orElse(List.of()),
        plant.baseLoads());
  }

  private static List<Own> own(Plant plant) {
    List<Own> own = new ArrayList<>();
    for (Line line : plant.lines()) {
      for (Step step : line.steps()) {
        step.ownHours().ifPresent(hours -> own.add(new Own(line.name(), step.machine(), hours)));
      }
    }
    return own;
  }

  List<SeasonEntry.Campaign> campaigns() {
    return season.stream()
        .filter(SeasonEntry.Campaign.class::isInstance)
        .map(SeasonEntry.Campaign.class::cast)
        .toList();
  }
}
