package hurdline.plant.yaml;

import hurdline.plant.BaseLoad;
import hurdline.plant.ClockHours;
import hurdline.plant.Tariff;
import hurdline.unit.Dimension;
import hurdline.unit.FileUnit;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.OptionalDouble;
import java.util.Set;

/** Reads what electricity costs and when, and what the building draws. */
final class TariffBinder {
  private static final int DAY_S = 86_400;

  private TariffBinder() {}

  static Tariff tariff(NodeReader at) {
    Fields f = at.fields(MapKeys.ELECTRICITY);
    if (f.has("ratchets") && !f.has("demand")) {
      f.at("ratchets")
          .idle(
              "a ratchet holds for the tariff's own demand charge, of which there is none",
              "\"demand\" beside it, such as demand: 12 USD/kW/month");
    }
    Set<LocalDate> holidays = new HashSet<>();
    for (NodeReader item : f.at("holidays").items("dates")) {
      Dates.date(item).ifPresent(holidays::add);
    }
    return new Tariff(
        energy(f).orElse(0),
        demand(f).orElse(0),
        f.at("periods").each("tariff period", (name, one) -> period(name, one, holidays)),
        f.at("ratchets").list("ratchets", TariffBinder::ratchet));
  }

  private static OptionalDouble energy(Fields f) {
    return Quantities.optional(f.at("energy"), Dimension.ENERGY_PRICE, Range.NOT_BELOW_0);
  }

  private static OptionalDouble demand(Fields f) {
    OptionalDouble perWS =
        Quantities.optional(f.at("demand"), Dimension.DEMAND_PRICE, Range.NOT_BELOW_0);
    return perWS.isPresent()
        ? OptionalDouble.of(perWS.getAsDouble() * FileUnit.MONTH.inSi())
        : perWS;
  }

  private static Tariff.Period period(String name, NodeReader at, Set<LocalDate> holidays) {
    Fields f = at.fields(MapKeys.TARIFF_PERIOD);
    if (at.isMap() && !f.has("energy") && !f.has("demand")) {
      at.wrong(
          "the period has no price",
          "\"energy\", \"demand\" or both, such as energy: 0.05 USD/kWh");
    }
    return new Tariff.Period(name, energy(f), demand(f), hours(f, holidays));
  }

  static BaseLoad baseLoad(String name, NodeReader at) {
    Fields f = at.fields(MapKeys.BASE_LOAD);
    return new BaseLoad(
        name, Quantities.of(f.at("power"), Dimension.POWER, Range.ABOVE_0, 1), hours(f, Set.of()));
  }

  /** From midnight to midnight where neither begin nor end is given. */
  private static ClockHours hours(Fields f, Set<LocalDate> holidays) {
    if (f.has("from") != f.has("to")) {
      f.at(f.has("from") ? "from" : "to")
          .wrong("\"from\" and \"to\" stand together", "both, or neither for all hours of the day");
    }
    int fromS = quarter(f.at("from"), 0);
    if (fromS == DAY_S) {
      f.at("from").wrong("hours cannot begin at \"24:00\"", "\"00:00\", on the next day");
      fromS = 0;
    }
    return new ClockHours(
        Dates.months(f.at("months")),
        Dates.weekdays(f.at("days")),
        fromS,
        quarter(f.at("to"), DAY_S),
        holidays);
  }

  private static int quarter(NodeReader at, int standIn) {
    int clockS = Dates.clock(at).orElse(standIn);
    if (!ClockHours.isQuarter(clockS)) {
      at.wrong(
          at.shown() + " is no full quarter-hour, by which meters count",
          "a time such as \"06:00\", \"06:15\", \"06:30\" or \"06:45\"");
      return standIn;
    }
    return clockS;
  }

  private static Tariff.Ratchet ratchet(NodeReader at) {
    Fields f = at.fields(MapKeys.RATCHET);
    return new Tariff.Ratchet(
        Quantities.of(f.at("at_least"), Dimension.SHARE, Range.SOME_SHARE, 1),
        Numbers.whole(f.at("of_last"), 1, 1),
        Dates.months(f.at("months")),
        Quantities.of(f.at("before"), Dimension.POWER, Range.NOT_BELOW_0, 0));
  }
}
