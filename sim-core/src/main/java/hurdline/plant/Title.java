package hurdline.plant;

/**
 * What people read in place of a name.
 *
 * @param name of the thing, unique within its kind: {@code mill}, and {@code mill.hammers} of what
 *     is a machine's or a crop's
 * @param path where the plant file has it
 */
public record Title(Kind kind, String name, String text, String path) {

  /** What may have a title. */
  public enum Kind {
    SHIFT("calendar.shifts", "shift"),
    COMPONENT("components", "component"),
    CROP("crops", "crop"),
    MACHINE("machines", "machine"),
    STOP("machines.*.stops", "stop"),
    SCREEN("machines.*.screens", "screen"),
    PRODUCT("products", "product"),
    STORE("stores", "store"),
    LINE("lines", "line"),
    RESOURCE("resources", "resource"),
    PLACE("yard.places", "place"),
    FIELD("deliveries.*.fields", "field"),
    TASK("season.*.tasks", "task"),
    OPTION("options", "option"),
    PLAN("plans", "plan"),
    CHOICE("choices", "choice");

    private final String section;
    private final String word;

    Kind(String section, String word) {
      this.section = section;
      this.word = word;
    }

    /**
     * Path of the map in the plant file that has them by name; a star is each name of a map or
     * place of a list.
     */
    public String section() {
      return section;
    }

    public String word() {
      return word;
    }
  }

  /** The machine or crop whose it is, with its dot; empty where it is the plant's own. */
  String owner() {
    return name.substring(0, name.lastIndexOf('.') + 1);
  }
}
