package hurdline.records;

import hurdline.plant.Crop;
import hurdline.plant.Plant;
import hurdline.problem.LocatedProblem;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Which crop a row is of, and of one that comes in several forms which form: by its own name, or by
 * the column {@code form} beside the crop.
 */
final class CropNames {
  private final Plant plant;
  private final NameReader names;
  private final List<String> crops;

  CropNames(Plant plant, NameReader names) {
    this.plant = plant;
    this.names = names;
    crops = plant.crops().stream().map(Crop::name).toList();
  }

  /**
   * @param name of the crop or form; empty where none is near
   * @param said how it was found, or what is wrong with the form; empty where nothing is
   */
  record Found(String name, String said) {
    boolean isOne() {
      return !name.isEmpty();
    }
  }

  /**
   * @param crop what the row says of its crop; where it says nothing the plant's only one
   * @param form what it says of its form; empty where it does not
   */
  Found of(String crop, String form) {
    Optional<NameReader.Read> read = crop.isEmpty() ? only() : names.read(crop, crops);
    if (read.isEmpty()) {
      return new Found("", "");
    }
    return form.isEmpty()
        ? new Found(read.get().name(), read.get().how())
        : form(plant.forms(plant.baseOf(read.get().name())), read.get(), form);
  }

  private Optional<NameReader.Read> only() {
    String first = plant.baseOf(crops.get(0));
    return plant.forms(first).size() == crops.size()
        ? Optional.of(new NameReader.Read(first, ""))
        : Optional.empty();
  }

  /** By its name, or as bales or modules where one form alone is that. */
  private Found form(List<Crop> forms, NameReader.Read crop, String word) {
    String plain = HeadReader.plain(word).replaceAll("s$", "");
    List<Crop> ofKind =
        forms.stream().filter(form -> plain.equals(form.modules() ? "module" : "bale")).toList();
    if (ofKind.size() == 1) {
      return new Found(ofKind.get(0).name(), crop.how());
    }
    return names
        .read(word, forms.stream().map(Crop::name).toList())
        .map(read -> new Found(read.name(), read.how().isEmpty() ? crop.how() : read.how()))
        .orElseGet(
            () ->
                new Found(
                    "",
                    "\""
                        + NumberReader.shortened(word)
                        + "\" is no form of "
                        + plant.baseOf(crop.name())
                        + ": "
                        + forms.stream()
                            .map(of -> of.name() + (of.modules() ? " (modules)" : " (bales)"))
                            .collect(Collectors.joining(", "))));
  }

  /**
   * A warning for each crop in several forms of which a file names the crop alone, so that all its
   * rows were read as the crop's own form.
   *
   * @param told the crop or form of each row
   */
  static List<LocatedProblem> formsUntold(Plant plant, RecordTable table, List<String> told) {
    return plant.crops().stream()
        .filter(crop -> crop.formOf().isEmpty() && told.contains(crop.name()))
        .filter(crop -> !table.has("form") && plant.forms(crop.name()).size() > 1)
        .filter(
            crop ->
                plant.forms(crop.name()).stream()
                    .noneMatch(form -> !form.equals(crop) && told.contains(form.name())))
        .map(crop -> untold(table, crop))
        .toList();
  }

  private static LocatedProblem untold(RecordTable table, Crop crop) {
    return new LocatedProblem(
        LocatedProblem.Severity.WARNING,
        table.file(),
        0,
        0,
        "",
        crop.name() + " comes in several forms, and all rows say " + crop.name(),
        "the form's name in place of the crop's, or a column \"form\"; read as "
            + crop.name()
            + (crop.modules() ? " in modules" : " in bales"),
        "",
        "");
  }
}
