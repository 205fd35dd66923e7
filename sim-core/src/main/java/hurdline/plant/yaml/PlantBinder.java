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
 * <p>What was bound before from nodes that still stand is taken over ({@link BoundBefore}); lines
 * go by the kinds of the machines too, the yard by the crops, deliveries by crops and calendar.
 * What is wrong is reported and a harmless stand-in takes its place, so that one pass finds all.
 */
final class PlantBinder {
  private PlantBinder() {}

  static Plant plant(Tree tree, Binding binding) {
    NodeReader at = NodeReader.top(tree, binding);
    Fields f = at.fields(MapKeys.PLANT);
    version(f.at("hurdline"));
    MoneyBinder.keepCurrency(f.at("money"));
    BoundBefore before = binding.before();
    Calendar calendar = before.section(f.at("calendar"), Plant::calendar, CalendarBinder::calendar);
    CropBinder ofCrops = new CropBinder(f.at("crops"));
    BoundBefore eachCrop = before.where(!ofCrops.hasForms());
    List<Crop> crops = eachCrop.each(f.at("crops"), "crop", Plant::crops, ofCrops::crop);
    Map<String, MapKeys> shapes = shapes(f.at("machines"));
    LineBinder lines = new LineBinder(shapes);
    BoundBefore ofLines = before.where(shapes.equals(before.shapes()));
    YardBinder yard = new YardBinder(crops);
    BoundBefore ofYard = before.where(before.isOf(Plant::crops, crops));
    DeliveryBinder deliveries = new DeliveryBinder(crops, calendar);
    BoundBefore ofDeliveries = ofYard.where(before.isOf(Plant::calendar, calendar));
    return new Plant(
        Words.text(f.at("plant")),
        calendar,
        before.section(f.at("components"), Plant::components, CropBinder::components),
        crops,
        before.each(f.at("machines"), "machine", Plant::machines, MachineBinder::machine),
        before.each(f.at("products"), "product", Plant::products, ProductBinder::product),
        before.each(f.at("packages"), "package", Plant::packages, ProductBinder::packaging),
        before.each(f.at("stores"), "store", Plant::stores, ProductBinder::store),
        ofLines.each(f.at("lines"), "line", Plant::lines, lines::line),
        before.section(f.at("season"), Plant::season, SeasonBinder::season),
        before.section(f.at("crews"), Plant::crews, SeasonBinder::crews),
        before.section(f.at("hands"), Plant::hands, HandsBinder::hands),
        before.each(f.at("resources"), "resource", Plant::resources, SeasonBinder::resource),
        ofYard.section(f.at("yard"), Plant::yard, yard::yard),
        ofDeliveries.each(f.at("deliveries"), "crop", Plant::deliveries, deliveries::delivery),
        before.each(f.at("base_loads"), "base load", Plant::baseLoads, TariffBinder::baseLoad),
        ofYard.section(f.at("money"), Plant::money, m -> MoneyBinder.money(m, crops)),
        before.each(f.at("options"), "option", Plant::options, MoneyBinder::option),
        before.each(f.at("plans"), "plan", Plant::plans, MoneyBinder::plan),
        before.section(f.at("doubt"), Plant::doubts, DoubtBinder::doubts),
        TitleBinder.titles(at, before));
  }

  private static void version(NodeReader at) {
    if (Numbers.whole(at, 1, 1) != 1) {
      at.wrong(
          at.shown() + " is a version of the format that this program does not know",
          "\"hurdline: 1\"");
    }
  }

  /** The kind of keys that each machine has. */
  static Map<String, MapKeys> shapes(NodeReader machines) {
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
