package hurdline.study;

import hurdline.answer.Header;
import hurdline.answer.Outline;
import hurdline.answer.Titles;
import hurdline.compiled.CampaignHours;
import hurdline.compiled.CompiledLines;
import hurdline.compiled.Stretch;
import hurdline.plant.Crop;
import hurdline.plant.Line;
import hurdline.plant.Machine;
import hurdline.plant.Money;
import hurdline.plant.Plant;
import hurdline.plant.Step;
import hurdline.plant.Title;
import hurdline.plant.Yard;
import hurdline.simulation.CompiledPlant;
import hurdline.study.replicate.Precision;
import hurdline.study.replicate.RunSettings;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/** What a plant is made of, in the plant file's own words and in order of flow. */
public final class PlantOutline {
  private static final double TONNE_KG = 1000;

  private final CompiledPlant stage;
  private final Plant plant;
  private final CompiledLines layout;

  public PlantOutline(CompiledPlant stage) {
    this.stage = stage;
    plant = stage.plant();
    layout = stage.layout();
  }

  public Outline outline() {
    return new Outline(
        plant.crops().stream().map(crop -> new Outline.Crop(crop.name(), unit(crop))).toList(),
        lines().stream().map(this::line).toList(),
        plant.yard().places().stream().map(this::place).toList(),
        plant.stores().stream()
            .map(store -> new Outline.Store(store.name(), store.holdsKg() / TONNE_KG))
            .toList(),
        titles(plant));
  }

  /** The same with titles of what is open, which only a choice among plans shows. */
  public Outline outlineWithChoices() {
    Map<String, String> given = new LinkedHashMap<>();
    plant.titles().stream()
        .filter(title -> title.kind() == Title.Kind.CHOICE)
        .forEach(title -> given.put(Titles.key(title.kind().word(), title.name()), title.text()));
    Outline own = outline();
    return new Outline(
        own.crops(), own.lines(), own.places(), own.stores(), own.titles().and(new Titles(given)));
  }

  /** The same with titles of what other plants have in addition. */
  public Outline outline(List<CompiledPlant> others) {
    Outline own = outline();
    Titles all = own.titles();
    for (CompiledPlant other : others) {
      all = all.and(titles(other.plant()));
    }
    return new Outline(own.crops(), own.lines(), own.places(), own.stores(), all);
  }

  public Header header(
      PlantOrigin source,
      PlantChanges chosen,
      RunSettings effort,
      int replications,
      boolean stopped) {
    return new Header(
        plant.name(),
        source.file(),
        source.contentHash(),
        source.version(),
        chosen.option(),
        chosen.sets(),
        effort.seed(),
        effort.replications(),
        replications,
        effort.until().map(Precision::said).orElse(""),
        stopped,
        currency(),
        plant.calendar().from(),
        plant.calendar().to());
  }

  /** Header of an answer for which nothing is simulated. */
  public Header header(PlantOrigin source, PlantChanges chosen) {
    return new Header(
        plant.name(),
        source.file(),
        source.contentHash(),
        source.version(),
        chosen.option(),
        chosen.sets(),
        0,
        0,
        0,
        "",
        false,
        currency(),
        plant.calendar().from(),
        plant.calendar().to());
  }

  static Titles titles(Plant plant) {
    Map<String, String> given = new LinkedHashMap<>();
    plant.titles().stream()
        .filter(title -> title.kind() != Title.Kind.CHOICE)
        .forEach(title -> given.put(Titles.key(title.kind().word(), title.name()), title.text()));
    return new Titles(given);
  }

  public String currency() {
    return plant.money().map(Money::currency).orElse("");
  }

  /** Lines that some campaign uses, in the file's order. */
  public List<Line> lines() {
    return plant.lines().stream()
        .filter(
            line ->
                stage.roster().campaigns().stream()
                    .map(CampaignHours::line)
                    .anyMatch(line.name()::equals))
        .toList();
  }

  private Outline.Line line(Line line) {
    return new Outline.Line(line.name(), line.crop(), line.feed(), machines(line), products(line));
  }

  private Outline.Place place(Yard.Place place) {
    List<String> crops =
        place.crops().isEmpty() ? plant.crops().stream().map(Crop::name).toList() : place.crops();
    String unit =
        plant.crops().stream()
            .filter(crop -> crops.contains(crop.name()))
            .findFirst()
            .map(PlantOutline::unit)
            .orElse("bales");
    return new Outline.Place(place.name(), crops, place.holds(), unit);
  }

  public static String unit(Crop crop) {
    return crop.modules() ? "modules" : "bales";
  }

  /** Heads of a line, each after those that bring it what it draws. */
  public int[] heads(Line line) {
    int l = layout.naming.lines.index(line.name());
    return IntStream.of(layout.headOrder).filter(h -> layout.headLine[h] == l).toArray();
  }

  /** A line's machines in order of flow, those alongside last. */
  List<String> machines(Line line) {
    Set<String> names = new LinkedHashSet<>();
    for (int h : heads(line)) {
      for (int m : layout.stretch[h].machine) {
        if (m >= 0) {
          names.add(layout.machine[m].name());
        }
      }
    }
    names.addAll(line.alongside());
    return List.copyOf(names);
  }

  /** Machines of all lines, then those that no line uses. */
  public List<String> allMachines() {
    Set<String> names = new LinkedHashSet<>();
    lines().forEach(line -> names.addAll(machines(line)));
    plant.machines().stream()
        .filter(machine -> !(machine instanceof Machine.Bin))
        .forEach(machine -> names.add(machine.name()));
    return List.copyOf(names);
  }

  public List<String> products(Line line) {
    Set<String> names = new LinkedHashSet<>();
    for (int h : heads(line)) {
      Stretch stretch = layout.stretch[h];
      for (int s = 0; s < stretch.sinks; s++) {
        names.addAll(products(stretch, s));
      }
    }
    return List.copyOf(names);
  }

  /** Products that come to rest at a sink; none for bins, waste and dust. */
  public List<String> products(Stretch stretch, int sink) {
    return switch (stretch.sinkKind[sink]) {
      case PILED, PACKED -> List.of(layout.naming.products.name(stretch.sinkTarget[sink]));
      case PACKED_FROM_MILL -> ofMill(layout.machine[stretch.sinkTarget[sink]].name());
      case WASTE, DUST, BIN -> List.of();
    };
  }

  private List<String> ofMill(String mill) {
    Set<String> names = new LinkedHashSet<>();
    plant.lines().stream()
        .flatMap(line -> line.steps().stream())
        .filter(step -> step.machine().equals(mill))
        .map(Step::makes)
        .forEach(makes -> names.addAll(makes.values()));
    return new ArrayList<>(names);
  }

  /** A machine's kind as the plant file spells it; {@code bin} for a bin. */
  public String kind(String name) {
    return kind(
        plant.machines().stream().filter(m -> m.name().equals(name)).findFirst().orElseThrow());
  }

  public static String kind(Machine machine) {
    if (machine instanceof Machine.Plain plain) {
      return plain.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
    if (machine instanceof Machine.Packer packer) {
      return packer.press() ? "press" : "bag-filler";
    }
    if (machine instanceof Machine.HammerMill) {
      return "hammer-mill";
    }
    if (machine instanceof Machine.Cyclone) {
      return "cyclone";
    }
    return machine instanceof Machine.Bin ? "bin" : "bale-feeder";
  }
}
