package hurdline.answer;

import java.util.List;

/**
 * What the plant is made of, by name, in the plant file's order.
 *
 * @param crops the crops
 * @param lines the lines that some campaign uses
 * @param places the yard's places
 * @param stores stores of products
 * @param titles what people read in place of the names
 */
public record Outline(
    List<Crop> crops, List<Line> lines, List<Place> places, List<Store> stores, Titles titles) {
  public Outline {
    crops = List.copyOf(crops);
    lines = List.copyOf(lines);
    places = List.copyOf(places);
    stores = stores == null ? List.of() : List.copyOf(stores); // a record of before has none
  }

  /**
   * A crop.
   *
   * @param unit how it is counted: {@code bales} or {@code modules}
   */
  public record Crop(String name, String unit) {}

  /**
   * A line.
   *
   * @param feed the machine that feeds it
   * @param machines its machines in order of flow, {@code alongside} last; no bins
   * @param products what it makes, in order of flow; neither waste nor air
   */
  public record Line(
      String name, String crop, String feed, List<String> machines, List<String> products) {
    public Line {
      machines = List.copyOf(machines);
      products = List.copyOf(products);
    }
  }

  /**
   * A place of the yard.
   *
   * @param crops the crops that it takes
   * @param holds how many, in {@code unit}
   * @param unit {@code bales} or {@code modules}
   */
  public record Place(String name, List<String> crops, double holds, String unit) {
    public Place {
      crops = List.copyOf(crops);
    }
  }

  /** A store of products, and what it holds, t. */
  public record Store(String name, double holds) {}

  /** Whether no other line is fed the line's crop. */
  public boolean isAlone(Line line) {
    return lines.stream().filter(each -> each.crop().equals(line.crop())).count() == 1;
  }

  /** The machines of all lines, each once. */
  public List<String> machines() {
    return lines.stream().flatMap(line -> line.machines().stream()).distinct().toList();
  }

  /** How many of a crop all places that take it can hold together, each counted in full. */
  public double capacityFor(String crop) {
    return places.stream().filter(p -> p.crops().contains(crop)).mapToDouble(Place::holds).sum();
  }
}
