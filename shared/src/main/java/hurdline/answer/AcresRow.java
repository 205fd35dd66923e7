package hurdline.answer;

/**
 * What becomes of a season with more or fewer acres; a row of {@code acres.csv}.
 *
 * @param times factor on the area of every field of the crop
 * @param acres all its fields together
 * @param chance share of seasons that finish the crop before the season's end
 * @param low95 lower end of the chance's 95 % interval
 * @param leftOver mean left over when the season ends, in the crop's unit of count
 */
public record AcresRow(
    double times, double acres, double chance, double low95, double high95, double leftOver) {}
