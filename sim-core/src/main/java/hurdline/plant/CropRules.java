package hurdline.plant;

import java.util.List;
import java.util.Map;

/** What bales are made of. */
final class CropRules {
  /** Shares are typed with a few digits; what differs by less is meant to be the whole. */
  static final double WHOLE = 1e-6;

  private static final double LEAST_KG = 1;
  private static final List<String> OF_THEIR_OWN = List.of("moisture", "diameter");

  private CropRules() {}

  static void check(Plant plant, Names names, Problems found) {
    for (Crop crop : plant.crops()) {
      crop.formOf().ifPresent(of -> form(crop, of, names, found));
      mass(
          "crops." + crop.name() + (crop.modules() ? ".module" : ".bale") + ".mass",
          crop.bale(),
          found);
      attributes("crops." + crop.name(), crop.bale(), found);
      if (!hasItsCrops(crop, names)) {
        composition(
            "crops." + crop.name() + ".composition", crop.bale().composition(), names, found);
      }
    }
    for (Delivery delivery : plant.deliveries()) {
      Crop crop = names.crops.get(delivery.crop());
      for (Delivery.Field field : delivery.fields()) {
        mass(
            "deliveries." + delivery.crop() + ".fields." + field.name() + ".bale.mass",
            field.bale(),
            found);
        if (crop == null || !field.bale().attributes().equals(crop.bale().attributes())) {
          attributes(
              "deliveries." + delivery.crop() + ".fields." + field.name(), field.bale(), found);
        }
        if (crop == null || !field.bale().composition().equals(crop.bale().composition())) {
          String path =
              "deliveries." + delivery.crop() + ".fields." + field.name() + ".composition";
          composition(path, field.bale().composition(), names, found);
        }
      }
    }
  }

  /** Whether a form has its crop's composition, or none because that crop is the mistake. */
  private static boolean hasItsCrops(Crop form, Names names) {
    if (form.formOf().isEmpty()) {
      return false;
    }
    Crop base = names.crops.get(form.formOf().get());
    Map<String, Double> shares = form.bale().composition();
    boolean isOfNoCrop = base == null || base.formOf().isPresent();
    return isOfNoCrop && shares.isEmpty()
        || base != null && shares.equals(base.bale().composition());
  }

  /** A form is of a crop that the file has and that is no form itself. */
  private static void form(Crop form, String of, Names names, Problems found) {
    String path = "crops." + form.name() + ".form_of";
    found.known(path, of, names.crops.keySet(), "no crop", "a crop");
    Crop base = names.crops.get(of);
    if (base != null && base.formOf().isPresent()) {
      found.add(
          path,
          of.equals(form.name())
              ? "\"" + of + "\" names itself"
              : "\"" + of + "\" is a form of \"" + base.base() + "\" itself",
          "the crop of which both are forms, with a bale of its own and no \"form_of\"");
    }
  }

  private static void mass(String path, Bale bale, Problems found) {
    if (!(bale.massKg().meanWithin(0, Double.POSITIVE_INFINITY) >= LEAST_KG)) {
      found.add(
          path,
          "such a bale weighs next to nothing",
          "a mean mass such as \"1050 lb\", 1 kg or more");
    }
  }

  private static void attributes(String path, Bale bale, Problems found) {
    for (String taken : OF_THEIR_OWN) {
      if (bale.attributes().containsKey(taken)) {
        found.add(
            path + ".attributes." + taken,
            "\"" + taken + "\" has a key of its own",
            "\"" + taken + "\" beside \"attributes\", or another name");
      }
    }
  }

  private static void composition(
      String path, Map<String, Double> shares, Names names, Problems found) {
    if (shares.isEmpty()) {
      found.add(path, "the composition is empty", "shares of dry matter that sum to 100 %");
      return;
    }
    shares
        .keySet()
        .forEach(
            name ->
                found.known(
                    path + "." + name,
                    name,
                    names.components.keySet(),
                    "no component",
                    "a component"));
    double sum = shares.values().stream().mapToDouble(Double::doubleValue).sum();
    if (Math.abs(sum - 1) > WHOLE) {
      found.add(
          path,
          "the shares sum to " + Problems.percent(sum),
          "shares of dry matter that sum to 100 %");
    }
  }
}
