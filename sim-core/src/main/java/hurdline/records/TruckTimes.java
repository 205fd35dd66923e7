package hurdline.records;

/**
 * What a ticket says of its truck besides the gate; in seconds since 1970, NaN where it does not.
 *
 * @param truck its number or plate; empty where it is not known
 * @param cameS to the gate; a ticket without it came, for all else, when it was weighed in
 * @param weighedInS when its gross weight was printed
 * @param weighedOutS when its tare was
 */
public record TruckTimes(
    String truck,
    double loadBeganS,
    double loadEndedS,
    double cameS,
    double weighedInS,
    double unloadBeganS,
    double unloadEndedS,
    double weighedOutS) {
  static TruckTimes none(String truck) {
    double none = Double.NaN;
    return new TruckTimes(truck, none, none, none, none, none, none, none);
  }
}
