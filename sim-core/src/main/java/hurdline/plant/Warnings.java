package hurdline.plant;

import hurdline.plant.SeasonEntry.Campaign;
import hurdline.plant.SeasonEntry.Changeover;
import hurdline.random.Distribution;
import hurdline.unit.Counted;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What may well be meant but is worth a look before anybody plans with it.
 *
 * <p>One file because it is the one list of cautions, told in one order.
 */
public final class Warnings {
  private final Plant plant;
  private final Names names;
  private final Problems found = new Problems();

  private Warnings(Plant plant) {
    this.plant = plant;
    this.names = new Names(plant);
  }

  /** Cautions, in the shape of problems; what was "expected" is advice here. */
  public static List<Problem> of(Plant plant) {
    Warnings cautions = new Warnings(plant);
    plant.crops().forEach(cautions::moisture);
    plant.lines().forEach(cautions::unreachable);
    new MillCautions(plant, cautions.found).look();
    new YardCautions(plant, cautions.found).look();
    plant.resources().forEach(cautions::nobody);
    plant.machines().forEach(machine -> StopRules.caution(machine, plant, cautions.found));
    cautions.idle();
    cautions.lostDays();
    new TaskCautions(plant, cautions.names, cautions.found).look();
    plant.lines().forEach(cautions::supply);
    plant.season().stream()
        .filter(Campaign.class::isInstance)
        .map(Campaign.class::cast)
        .forEach(cautions::crew);
    plant.products().forEach(cautions::orders);
    PurgeRules.caution(plant, cautions.found);
    new PriceCautions(plant, cautions.found).look();
    plant.deliveries().forEach(cautions::room);
    plant.money().ifPresent(cautions::worth);
    return cautions.found.all();
  }

  private void moisture(Crop crop) {
    tooWet("crops." + crop.name() + ".moisture", crop.bale().moisture(), crop);
    for (Delivery delivery : plant.deliveries()) {
      if (delivery.crop().equals(crop.name())) {
        delivery.fields().stream()
            .filter(field -> !field.bale().moisture().equals(crop.bale().moisture()))
            .forEach(
                field ->
                    tooWet(
                        "deliveries." + crop.name() + ".fields." + field.name() + ".moisture",
                        field.bale().moisture(),
                        crop));
      }
    }
  }

  private void tooWet(String path, Distribution moisture, Crop crop) {
    if (crop.isDamp(moisture)) {
      found.add(
          path,
          "one "
              + (crop.modules() ? "module" : "bale")
              + " in ten or more has "
              + Problems.percent(crop.dampFrom())
              + " moisture or more, from where it counts as damp (damp_from)",
          "damp ones heat, rot and can set themselves on fire; check the moisture before stacking"
              + " and keep to local fire codes");
    }
  }

  private void unreachable(Line line) {
    MaterialPaths ways = new MaterialPaths(line, names, false);
    Set<String> present = ComponentPresence.in(line, plant, names);
    Set<MaterialPaths.At> reached =
        ways.reachable(
            present.stream().map(name -> new MaterialPaths.At(line.feed(), name)).toList());
    Map<String, Set<String>> at = new HashMap<>();
    reached.forEach(
        place ->
            at.computeIfAbsent(place.machine(), key -> new HashSet<>()).add(place.component()));
    for (Step step : line.steps()) {
      if (!at.containsKey(step.machine())) {
        found.add(
            Names.path(line, step),
            "nothing reaches \"" + step.machine() + "\" in this line",
            "leave its step out, or lead something to it");
      } else {
        outlets(line, step, ways, at.get(step.machine()));
      }
    }
  }

  private void outlets(Line line, Step step, MaterialPaths ways, Set<String> components) {
    Set<MaterialPaths.At> next =
        components.stream()
            .flatMap(name -> ways.next(new MaterialPaths.At(step.machine(), name)).stream())
            .collect(Collectors.toSet());
    for (int i = 0; i < step.outlets().size(); i++) {
      String to = step.outlets().get(i).to();
      if (next.stream().noneMatch(place -> place.machine().equals(to))) {
        found.add(
            Names.path(line, step, i) + ".to",
            "nothing can reach \"" + to + "\" by this outlet",
            "check the shares of the outlets before it");
      }
    }
  }

  private void supply(Line line) {
    boolean comes =
        plant.forms(line.crop()).stream()
                .anyMatch(form -> plant.yard().onHand().getOrDefault(form.name(), 0) > 0)
            || plant.deliveries().stream()
                .anyMatch(delivery -> plant.baseOf(delivery.crop()).equals(line.crop()));
    if (!comes) {
      found.add(
          "lines." + line.name() + ".crop",
          "no \"" + line.crop() + "\" lies on hand and none is delivered",
          "the line will have nothing to work");
    }
  }

  private void nobody(Resource resource) {
    if (resource.count() == 0) {
      found.add(
          "resources." + resource.name() + ".count",
          "a count of 0 never serves",
          "whatever needs \"" + resource.name() + "\" waits for good");
    }
  }

  private void crew(Campaign campaign) {
    for (int i = 0; i < campaign.shifts().size(); i++) {
      String shift = campaign.shifts().get(i);
      boolean paid =
          plant.crews().stream()
              .anyMatch(
                  c ->
                      c.line().equals(campaign.line()) && c.shift().equals(shift) && c.hands() > 0);
      if (!paid && plant.money().filter(money -> money.wagePerS() > 0).isPresent()) {
        found.add(
            "crews",
            "line \"" + campaign.line() + "\" works shift \"" + shift + "\" without a paid hand",
            "name its hands under crews."
                + campaign.line()
                + "; nobody should run machines alone or unattended");
      }
    }
  }

  private void orders(Product product) {
    if (product.sellsOrdersOnly() && product.orders().isEmpty()) {
      found.add(
          "products." + product.name() + ".sells",
          "it sells on orders only and has none",
          "it will earn nothing");
    }
  }

  private void room(Delivery delivery) {
    int room =
        plant.yard().places().stream()
            .filter(place -> place.crops().isEmpty() || place.crops().contains(delivery.crop()))
            .mapToInt(Yard.Place::holds)
            .sum();
    int load =
        Math.max(
            delivery
                .trucks()
                .filter(trucks -> !delivery.fields().isEmpty())
                .map(Delivery.Trucks::bales)
                .orElse(0),
            delivery.loads().map(Delivery.Loads::bales).orElse(0));
    if (load > room) {
      found.add(
          "deliveries." + delivery.crop(),
          "one load is "
              + load
              + " "
              + counted(delivery.crop())
              + " and all places for \""
              + delivery.crop()
              + "\" hold "
              + room,
          "such a load never finds room");
    }
  }

  private String counted(String crop) {
    return plant.crops().stream().anyMatch(c -> c.name().equals(crop) && c.modules())
        ? "modules"
        : "bales";
  }

  private void idle() {
    for (int i = 0; i < plant.season().size(); i++) {
      if (plant.season().get(i) instanceof Campaign campaign
          && campaign
              .from()
              .datesUntil(campaign.to().plusDays(1))
              .noneMatch(date -> works(campaign, date))) {
        found.add(
            "season." + i,
            "none of its shifts starts from " + campaign.from() + " to " + campaign.to(),
            "the line will not work; check dates, days of the week and closed days");
      }
    }
  }

  private void lostDays() {
    Campaign before = null;
    Optional<LocalDate> busyTo = Optional.empty();
    for (int i = 0; i < plant.season().size(); i++) {
      SeasonEntry entry = plant.season().get(i);
      if (entry instanceof Changeover changeover && before != null) {
        busyTo = Optional.of(lastDay(changeover, before, busyTo.orElse(before.to())));
      } else if (entry instanceof Campaign campaign) {
        if (busyTo.isPresent() && !campaign.from().isAfter(busyTo.get())) {
          lost("season." + i + ".from", campaign, busyTo.get());
        }
        before = campaign;
        busyTo = Optional.empty();
      }
    }
  }

  private LocalDate lastDay(Changeover changeover, Campaign before, LocalDate after) {
    LocalDate date = after;
    int left = changeover.days();
    while (left > 0 && date.isBefore(plant.calendar().to())) {
      date = date.plusDays(1);
      left -= works(before, date) ? 1 : 0;
    }
    return date;
  }

  private void lost(String path, Campaign campaign, LocalDate busyTo) {
    LocalDate last = busyTo.isBefore(campaign.to()) ? busyTo : campaign.to();
    long days =
        campaign.from().datesUntil(last.plusDays(1)).filter(date -> works(campaign, date)).count();
    if (days > 0) {
      found.add(
          path,
          "the changeover before it lasts to the end of "
              + busyTo
              + " and costs it "
              + Counted.of(days, "working day"),
          "begin it later, or the changeover sooner, if that is not meant");
    }
  }

  private boolean works(Campaign campaign, LocalDate date) {
    return plant
        .calendar()
        .anyStartsOn(date, campaign.shifts().stream().map(names.shifts::get).toList());
  }

  /** What a life of something bought would rest on and the file does not say. */
  private void worth(Money money) {
    if (!plant.options().isEmpty()
        && plant.calendar().isShorterThanAYear()
        && plant.calendar().repeats().isEmpty()) {
      found.add(
          "calendar",
          "the calendar of "
              + Counted.of(plant.calendar().days(), "day")
              + " is shorter than a year and does not say how it repeats over the life of an"
              + " option",
          "write \"repeats: yearly\" (every year at the same season) or \"repeats: end-to-end\";"
              + " without it no net present value is given");
    }
    if (money.cash().isGiven()
        && money.cash().assets().isPresent()
        && plant.calendar().taxYears().isEmpty()) {
      found.add(
          "money.assets",
          "the calendar is neither of whole years nor a season that repeats yearly, so no year's"
              + " loan and tax can be set against its margin",
          "a calendar of whole years, or \"repeats: yearly\"; without it there is no cash view in"
              + " run");
    }
    boolean bought =
        plant.options().stream().anyMatch(option -> option.cost() > 0)
            || plant.yard().places().stream().anyMatch(place -> place.costPerM2() > 0);
    if (bought && money.discount().isEmpty()) {
      found.add(
          "money",
          "no discount rate is given, so money of later years counts in full",
          "write the rate at which you borrow or could invest, such as \"discount_rate: 9 %/yr\","
              + " or \"discount_rate: 0 %/yr\" if that is meant");
    }
  }
}
