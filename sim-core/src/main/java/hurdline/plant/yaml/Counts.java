package hurdline.plant.yaml;

/** Reads how many bales; {@code modules} may stand for {@code bales}. */
final class Counts {
  private Counts() {}

  /**
   * @param modules whether the crop is counted in modules
   */
  static int bales(Fields f, boolean modules, int standIn) {
    if (f.has("modules") && !modules) {
      f.at("modules")
          .wrong("this crop is counted in bales", "\"bales\" here, or a \"module\" in the crop");
    }
    if (f.has("bales") && f.has("modules")) {
      f.at("modules").wrong("it has \"bales\" and \"modules\"", "one of them");
    }
    return Numbers.whole(f.has("modules") ? f.at("modules") : f.at("bales"), 1, standIn);
  }

  /** A count that must be there. */
  static int needed(Fields f, boolean modules) {
    if (f.here().isMap() && !f.has("bales") && !f.has("modules")) {
      f.missing("bales");
    }
    return bales(f, modules, 1);
  }
}
