package hurdline.plant.yaml;

import hurdline.plant.Calendar;
import hurdline.plant.Crop;
import hurdline.plant.Plant;
import hurdline.plant.yaml.tree.Tree;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Binds a tree to the records of a plant.
 *
 * <p>What is wrong is reported and a harmless stand-in takes its place, so that one pass finds all.
 */
final class PlantBinder {
  private PlantBinder() {}

  static Plant plant(Tree tree, Binding binding) {
    NodeReader at = NodeReader.top(tree, binding);
    Fields f = at.fields(MapKeys.PLANT);
    version(f.at("hurdline"));
    MoneyBinder.keepCurrency(f.at("money"));
    Calendar calendar = CalendarBinder.calendar(f.at("calendar"));
    List<Crop> crops = f.at("crops").each("crop", CropBinder::crop);
    LineBinder lines = new LineBinder(shapes(f.at("machines")));
    DeliveryBinder deliveries = new DeliveryBinder(crops, calendar);
    return new Plant(
        Words.text(f.at("plant")),
        calendar,
        CropBinder.components(f.at("components")),
        crops,
        f.at("machines").each("machine", MachineBinder::machine),
        f.at("products").each("product", ProductBinder::product),
        f.at("packages").each("package", ProductBinder::packaging),
        f.at("lines").each("line", lines::line),
        SeasonBinder.season(f.at("season")),
        SeasonBinder.crews(f.at("crews")),
        f.at("resources").each("resource", SeasonBinder::resource),
        new YardBinder(crops).yard(f.at("yard")),
        f.at("deliveries").each("crop", deliveries::delivery),
        f.at("base_loads").each("base load", TariffBinder::baseLoad),
        MoneyBinder.money(f.at("money")),
        f.at("options").each("option", MoneyBinder::option),
        f.at("plans").each("plan", MoneyBinder::plan),
        TitleBinder.titles(at));
  }

  private static void version(NodeReader at) {
    if (Numbers.whole(at, 1, 1) != 1) {
      at.wrong(
          at.shown() + " is a version of the format that this program does not know",
          "\"hurdline: 1\"");
    }
  }

  private static Map<String, MapKeys> shapes(NodeReader machines) {
    Map<String, MapKeys> shapes = new LinkedHashMap<>();
    if (machines.isMap()) {
      machines
          .entries()
          .orElseThrow()
          .keySet()
          .forEach(name -> shapes.put(name, MachineBinder.shape(machines.child(name))));
    }
    return shapes;
  }
}
