package hurdline.simulation.yard;

import hurdline.account.LoadBooks;
import hurdline.compiled.Haulage;
import hurdline.compiled.YardPlan;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A load as it was weighed in.
 *
 * @param field that it came from; empty where it came by itself
 */
public record WeighedLoad(
    double atS, String crop, String field, int bales, double kg, double dryKg) {
  public static List<WeighedLoad> of(LoadBooks books, YardPlan yard, Haulage haulage) {
    return IntStream.range(0, books.count())
        .mapToObj(
            load ->
                new WeighedLoad(
                    books.atS(load),
                    yard.crop(books.crop(load)),
                    books.field(load) < 0 ? "" : haulage.field(books.field(load)).field().name(),
                    books.bales(load),
                    books.kg(load),
                    books.dryKg(load)))
        .toList();
  }
}
