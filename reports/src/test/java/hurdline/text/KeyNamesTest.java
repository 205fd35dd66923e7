package hurdline.text;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.answer.KeyNames;
import hurdline.answer.Titles;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class KeyNamesTest {
  private static final Titles TITLES =
      new Titles(
          Map.of(
              "machine.mill",
              "Hammer mill",
              "product.fine",
              "Fine hurd",
              "place.shed",
              "North Barn"));

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '"',
      value = {
        "machines.mill.power,power of the hammer mill",
        "machines.mill.stops.hammers.every,interval of stop hammers of the hammer mill",
        "machines.*.power,power of all machines",
        "machines.hurd_bin.holds,room of the hurd bin",
        "products.fine.price,price of fine hurd",
        "products.*.price,price of all products",
        "money.wage,wage",
        "money.electricity.energy,electricity energy",
        "money.discount_rate,discount rate",
        "money.crop_prices.seed_cotton,crop price of seed cotton",
        "money.crop_prices.*,crop price of all crops",
        "yard.on_hand.stalk,stock on hand of stalk",
        "yard.places.shed.holds,room of the North Barn",
        "deliveries.stalk.trucks.count,trucks count of stalk",
        "deliveries.stalk.fields.*.area,area of all fields of stalk",
        "deliveries.stalk.fields.north_bench.area,area of field north bench of stalk",
        "calendar.shifts.day.to,end of shift day",
        "calendar.shifts.day.from,start of shift day",
        "calendar.to,last day of the calendar",
        "season.2.changeover,changeover of season entry 2",
        "season.0.to,last day of season entry 0",
        "season.*.from,first day of all season entries",
        "lines.stalk_line.steps.mill.rate,rate of the hammer mill of the stalk line",
        "crops.stalk.composition.hurd,share of hurd of stalk"
      })
  void aPathReadsAsWhatItIsOf(String path, String read) {
    assertThat(KeyNames.of(path, TITLES)).isEqualTo(read);
  }
}
