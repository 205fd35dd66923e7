package hurdline.plant;

import java.util.List;

/**
 * Everything about a plant that no single key can show to be wrong.
 *
 * <p>Each group of rules passes over what it cannot resolve, so that one wrong name is told once
 * and the rest is still looked at.
 */
public final class Rules {
  private Rules() {}

  /** All that is wrong, in no order of the file. */
  public static List<Problem> problems(Plant plant) {
    Problems found = new Problems();
    Names names = new Names(plant);
    NameRules.check(plant, found);
    TitleRules.check(plant, names, found);
    CalendarRules.check(plant, found);
    CropRules.check(plant, names, found);
    MachineRules.check(plant, names, found);
    LinkRules.check(plant, names, found);
    MillRules.check(plant, names, found);
    ShareRules.check(plant, names, found);
    FlowRules.check(plant, names, found);
    SeasonRules.check(plant, names, found);
    ResourceRules.check(plant, names, found);
    YardRules.check(plant, names, found);
    MoneyRules.check(plant, names, found);
    CleanlinessRules.check(plant, names, found);
    MarketRules.check(plant, found);
    FreightRules.check(plant, found);
    PurchaseRules.check(plant, names, found);
    StoreRules.check(plant, names, found);
    return found.all();
  }
}
