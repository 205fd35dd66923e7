package hurdline.plant;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A crop is paid and rejected by what its bales have, and rejected where it is weighed. */
final class PurchaseRules {
  private PurchaseRules() {}

  static void check(Plant plant, Names names, Problems found) {
    plant
        .money()
        .ifPresent(
            money -> {
              money.terms().forEach((crop, terms) -> terms(crop, terms, plant, names, found));
              money
                  .grades()
                  .forEach(
                      (crop, grades) -> {
                        String base = plant.baseOf(crop);
                        if (base.equals(crop) || !grades.equals(money.grades().get(base))) {
                          grades(crop, grades, plant, names, found);
                        }
                      });
            });
    for (Delivery delivery : plant.deliveries()) {
      String path = "deliveries." + delivery.crop() + ".reject";
      if (!delivery.rejects().isEmpty() && delivery.weigh().isEmpty()) {
        found.add(
            path,
            "a load is rejected as it is weighed in, and nothing is weighed",
            "a \"weigh\" beside it, such as \"weigh: {lasts: 4 min}\"");
      }
      for (int at = 0; at < delivery.rejects().size(); at++) {
        has(
            path + "." + at + ".by",
            delivery.rejects().get(at).by(),
            delivery.crop(),
            plant,
            found);
      }
    }
  }

  private static void terms(
      String crop, CropTerms terms, Plant plant, Names names, Problems found) {
    String path = "money.crop_terms." + crop;
    found.known(path, crop, names.crops.keySet(), "no crop", "a crop");
    Calendar calendar = plant.calendar();
    terms
        .advance()
        .flatMap(CropTerms.Advance::paid)
        .filter(paid -> paid.isBefore(calendar.from()) || paid.isAfter(calendar.to()))
        .ifPresent(
            paid ->
                found.add(
                    path + ".advance.paid",
                    "an advance outside the calendar: " + paid,
                    "a date from " + calendar.from() + " to " + calendar.to()));
    boolean loads =
        plant.deliveries().stream().anyMatch(d -> d.crop().equals(crop) && d.loads().isPresent());
    if (names.crops.containsKey(crop) && loads) {
      found.add(
          path,
          "area and advances are paid for fields, and \""
              + crop
              + "\" does not come from fields alone",
          "fields under deliveries." + crop + " and no loads, or a price in crop_prices");
    }
  }

  private static void grades(
      String crop, List<Grade> grades, Plant plant, Names names, Problems found) {
    String path = "money.crop_grades." + crop;
    found.known(path, crop, names.crops.keySet(), "no crop", "a crop");
    for (int at = 0; at < grades.size(); at++) {
      has(path + "." + at + ".by", grades.get(at).by(), crop, plant, found);
    }
  }

  private static void has(String path, String by, String crop, Plant plant, Problems found) {
    Optional<Crop> known = plant.crops().stream().filter(c -> c.name().equals(crop)).findFirst();
    if (known.isEmpty()) {
      return;
    }
    List<String> all = new ArrayList<>(List.of(Grade.moisture()));
    all.addAll(known.get().bale().attributes().keySet());
    if (!all.contains(by)) {
      found.add(
          path,
          "\"" + Problems.cut(by) + "\" is nothing that bales of \"" + crop + "\" have",
          Nearest.expected("moisture or an attribute of the crop", by, all));
    }
  }
}
