package hurdline.plant.yaml;

/** Reads how many bales; {@code modules} may stand for {@code bales}. */
final class Counts {
  private Counts() {}

  static int bales(Fields f, int standIn) {
    if (f.has("bales") && f.has("modules")) {
      f.at("modules").wrong("it has \"bales\" and \"modules\"", "one of them");
    }
    return Numbers.whole(f.has("modules") ? f.at("modules") : f.at("bales"), 1, standIn);
  }

  /** A count that must be there. */
  static int needed(Fields f) {
    if (f.here().isMap() && !f.has("bales") && !f.has("modules")) {
      f.missing("bales");
    }
    return bales(f, 1);
  }
}
