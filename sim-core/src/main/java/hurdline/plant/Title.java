package hurdline.plant;

/**
 * What people read in place of a name.
 *
 * @param name of the thing, unique within its kind
 */
public record Title(Kind kind, String name, String text) {

  /** What may have a title. */
  public enum Kind {
    CROP("crops", "crop"),
    MACHINE("machines", "machine"),
    PRODUCT("products", "product"),
    LINE("lines", "line"),
    RESOURCE("resources", "resource"),
    PLACE("yard.places", "place"),
    OPTION("options", "option"),
    PLAN("plans", "plan");

    private final String section;
    private final String word;

    Kind(String section, String word) {
      this.section = section;
      this.word = word;
    }

    /** Path of the map in the plant file that has them by name. */
    public String section() {
      return section;
    }

    public String word() {
      return word;
    }
  }

  /** Where the plant file has it. */
  public String path() {
    return kind.section + "." + name + ".title";
  }
}
