package hurdline.records;

/**
 * A load over the truck scale.
 *
 * @param inS seconds since 1970; NaN where it is not known, as is all else that may be
 * @param moisture water over mass as it is
 */
public record TicketRecord(
    int line,
    String crop,
    String field,
    double inS,
    double outS,
    double netKg,
    double bales,
    double moisture,
    TruckTimes times) {}
