package hurdline.records;

import hurdline.plant.Machine;
import hurdline.plant.Plant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A column of power.csv that is a machine's own meter: its head is the machine's name and kWh.
 *
 * @param at where the column stands
 * @param highestKWh that its motor can draw in an hour; 0 where the plant file does not say
 * @param how the name was read; empty where it is the machine's
 */
record MeterColumn(String machine, int at, double highestKWh, NumberReader numbers, String how) {
  private static final Pattern HEAD =
      Pattern.compile("^(.+?)[\\s_]*[(\\[]?(?:kwh|energy)[)\\]]?$", Pattern.CASE_INSENSITIVE);

  /** One for each machine, the first where two columns name one. */
  static List<MeterColumn> of(RecordTable table, RecordsMap map, Plant plant) {
    NameReader names = new NameReader(map.machines());
    List<String> machines = plant.machines().stream().map(Machine::name).toList();
    List<MeterColumn> found = new ArrayList<>();
    Set<String> taken = new HashSet<>();
    for (Map.Entry<String, Integer> other : table.others().entrySet()) {
      Matcher head = HEAD.matcher(other.getKey());
      Optional<NameReader.Read> name =
          head.matches() ? names.read(head.group(1), machines) : Optional.empty();
      if (name.isPresent() && taken.add(name.get().name())) {
        found.add(of(table, plant, name.get(), other.getValue()));
      }
    }
    return found;
  }

  private static MeterColumn of(RecordTable table, Plant plant, NameReader.Read name, int at) {
    double powerW =
        plant.machines().stream()
            .filter(machine -> machine.name().equals(name.name()))
            .mapToDouble(machine -> machine.common().powerW())
            .sum();
    List<String> cells = table.rows().stream().map(row -> row.cell(at)).toList();
    NumberReader numbers = NumberReader.of(cells, table.separator() == ';');
    return new MeterColumn(name.name(), at, powerW / 1000, numbers, name.how());
  }
}
