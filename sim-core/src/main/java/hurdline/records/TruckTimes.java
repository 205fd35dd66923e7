package hurdline.records;

/**
 * What a ticket says of its truck besides the gate; in seconds since 1970, NaN where it does not.
 *
 * @param truck its number or plate; empty where it is not known
 */
public record TruckTimes(
    String truck, double loadBeganS, double loadEndedS, double unloadBeganS, double unloadEndedS) {}
