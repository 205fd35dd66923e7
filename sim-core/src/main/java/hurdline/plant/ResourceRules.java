package hurdline.plant;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Resources: who needs them, and in which order they serve. */
final class ResourceRules {
  static final List<String> JOBS =
      List.of("lift", "load", "weigh", "unload", "package_change", "screen_change");

  private ResourceRules() {}

  static void check(Plant plant, Names names, Problems found) {
    needs(plant)
        .forEach(
            (path, need) ->
                found.known(path, need, names.resources.keySet(), "no resource", "a resource"));
    List<String> kinds = kinds(plant);
    for (Resource resource : plant.resources()) {
      first(resource, kinds, found);
    }
  }

  private static void first(Resource resource, List<String> kinds, Problems found) {
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < resource.first().size(); i++) {
      String path = "resources." + resource.name() + ".priority." + i;
      String kind = resource.first().get(i);
      found.known(
          path,
          kind,
          kinds,
          "no kind of job",
          "a kind of job, or a machine and its stop such as saw.choke");
      if (!seen.add(kind)) {
        found.add(
            path, "\"" + Problems.cut(kind) + "\" stands here twice", "each kind of job once");
      }
    }
  }

  private static List<String> kinds(Plant plant) {
    List<String> kinds = new ArrayList<>(JOBS);
    for (Machine machine : plant.machines()) {
      machine.common().stops().forEach(stop -> kinds.add(machine.name() + "." + stop.name()));
    }
    return kinds;
  }

  /** The resource that is needed, by the path of the key that says so. */
  static Map<String, String> needs(Plant plant) {
    Map<String, String> needs = new LinkedHashMap<>();
    for (Machine machine : plant.machines()) {
      String path = "machines." + machine.name();
      machine
          .common()
          .stops()
          .forEach(stop -> put(needs, path + ".stops." + stop.name(), stop.needs()));
      if (machine instanceof Machine.HammerMill mill) {
        put(needs, path, mill.swapNeeds());
      }
    }
    plant
        .packages()
        .forEach(packaging -> put(needs, "packages." + packaging.name(), packaging.needs()));
    lifts(plant, needs);
    plant.deliveries().forEach(delivery -> delivery(delivery, needs));
    return needs;
  }

  /** One lift for all crops stands at the top of its key, one by crop under the crop. */
  private static void lifts(Plant plant, Map<String, String> needs) {
    boolean oneForAll =
        plant.yard().lifts().size() == plant.crops().size()
            && plant.yard().lifts().values().stream()
                    .map(System::identityHashCode)
                    .distinct()
                    .count()
                == 1
            && plant.crops().size() > 1;
    plant
        .yard()
        .lifts()
        .forEach(
            (crop, lift) -> {
              boolean all = oneForAll || plant.crops().size() == 1;
              String base = plant.baseOf(crop);
              if (!base.equals(crop) && lift == plant.yard().lifts().get(base)) {
                return; // told with its crop
              }
              put(needs, "yard.lift" + (all ? "" : "." + crop), lift.job().needs());
            });
  }

  private static void delivery(Delivery delivery, Map<String, String> needs) {
    String path = "deliveries." + delivery.crop();
    delivery.weigh().ifPresent(job -> put(needs, path + ".weigh", job.needs()));
    put(needs, path + ".unload", delivery.unload().needs());
    delivery.trucks().ifPresent(trucks -> put(needs, path + ".trucks.load", trucks.load().needs()));
  }

  private static void put(Map<String, String> needs, String path, List<String> need) {
    for (int k = 0; k < need.size(); k++) {
      needs.put(path + ".needs" + (need.size() > 1 ? "." + k : ""), need.get(k));
    }
  }
}
