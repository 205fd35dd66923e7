package hurdline.study.yard;

import hurdline.answer.Increase;
import hurdline.answer.Increase.Kind;
import hurdline.plant.Change;
import hurdline.plant.Delivery;
import hurdline.plant.Option;
import hurdline.plant.SeasonEntry;
import hurdline.simulation.CompiledPlant;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.gain.CapacityIncrease;
import hurdline.study.gain.CapacityIncreases;
import hurdline.study.option.OptionPlants;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What may shorten the peak of a yard: a truck more or less, an hour more of receiving, another
 * shift, each option of the file, and a tenth more of what may hold a line.
 */
final class PeakReductions {
  private static final int DAY_S = 86_400;
  private static final int HOUR_S = 3_600;

  private final PlantOrigin source;
  private final PlantChanges base;
  private final CompiledPlant stage;
  private final String crop;
  private final List<CapacityIncrease> all = new ArrayList<>();

  /**
   * @param base the plant without limit
   */
  PeakReductions(PlantOrigin source, PlantChanges base, CompiledPlant stage, YardUnderStudy yard) {
    this.source = source;
    this.base = base;
    this.stage = stage;
    crop = yard.crop().name();
    stage.plant().deliveries().stream().filter(d -> d.crop().equals(crop)).forEach(this::delivery);
    secondShift();
    stage.plant().options().stream().map(Option::name).forEach(this::option);
    all.addAll(new CapacityIncreases(source, base, stage).all());
  }

  /** Those that make a plant without problems. */
  List<CapacityIncrease> all() {
    return all;
  }

  private void delivery(Delivery delivery) {
    String path = "deliveries." + crop;
    delivery
        .trucks()
        .filter(trucks -> !delivery.fields().isEmpty())
        .ifPresent(
            trucks -> {
              truck(path, trucks.count() + 1, 1);
              if (trucks.count() > 1) {
                truck(path, trucks.count() - 1, -1);
              }
              int to = Math.min(DAY_S, delivery.hours().toS() + HOUR_S);
              if (to > delivery.hours().toS()) {
                String clock =
                    String.format(Locale.ROOT, "%02d:%02d", to / HOUR_S, to % HOUR_S / 60);
                add(
                    CapacityIncrease.of(
                        "receiving",
                        new Increase(Kind.OPEN_TO, HOUR_S, to),
                        value(path + ".hours.to", '"' + clock + '"')));
              }
            });
  }

  private void truck(String path, int count, int more) {
    add(
        CapacityIncrease.of(
            "trucks",
            new Increase(Kind.TRUCKS, more, count),
            value(path + ".trucks.count", Integer.toString(count))));
  }

  /**
   * In every campaign of the crop also the first shift of the calendar that does not run into those
   * it has.
   */
  private void secondShift() {
    List<SeasonEntry> season = stage.plant().season();
    for (var shift : stage.plant().calendar().shifts()) {
      List<Change> changes = new ArrayList<>();
      for (int at = 0; at < season.size(); at++) {
        if (season.get(at) instanceof SeasonEntry.Campaign campaign
            && works(campaign.line())
            && !campaign.shifts().contains(shift.name())) {
          List<String> shifts = new ArrayList<>(campaign.shifts());
          shifts.add(shift.name());
          Change change = value("season." + at + ".shifts", shifts.toString());
          if (new CapacityIncrease("", Increase.of(Kind.WHOLE_SEASON), List.of(change))
              .isPossible(source, base)) {
            changes.add(change);
          }
        }
      }
      if (!changes.isEmpty()
          && add(
              new CapacityIncrease(
                  "shift " + shift.name(), Increase.of(Kind.WHOLE_SEASON), changes))) {
        return;
      }
    }
  }

  private boolean works(String line) {
    return stage.plant().lines().stream()
        .anyMatch(l -> l.name().equals(line) && l.crop().equals(stage.plant().baseOf(crop)));
  }

  private void option(String name) {
    if (!OptionPlants.parts(base.option()).contains(name)) {
      add(CapacityIncrease.of(name, Increase.of(Kind.OPTION), new Change.Named(name)));
    }
  }

  private static Change value(String path, String value) {
    return new Change.Value(path, value);
  }

  private boolean add(CapacityIncrease more) {
    boolean possible = more.isPossible(source, base);
    if (possible) {
      all.add(more);
    }
    return possible;
  }
}
