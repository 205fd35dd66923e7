package hurdline.records;

/**
 * A change of a full package.
 *
 * @param packaging the plant file's name of it
 * @param beganS seconds since 1970
 * @param stepS the unit of the clock by which it was told
 */
public record ChangeRecord(
    int line, String packaging, double beganS, double lastedS, double stepS) {}
