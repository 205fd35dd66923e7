package hurdline.plant;

/** Something that might be bought or changed; what it changes is a patch on the plant file. */
public record Option(String name, String says, double cost, double lifeYr, double salvage) {
  public Option {
    Check.notBelow0("cost", cost);
    Check.above0("lifeYr", lifeYr);
    Check.finite("salvage", salvage);
  }
}
