package hurdline.plant;

import hurdline.unit.Counted;
import java.util.Optional;
import java.util.stream.Collectors;

/** Crews that may be short: they must be crews, and what they share must be there. */
final class HandsRules {
  private HandsRules() {}

  static void check(Plant plant, Names names, Problems found) {
    for (Hands.Attendance one : plant.hands().attendance()) {
      String path = "hands.attendance." + one.line();
      found.known(path, one.line(), names.lines.keySet(), "no line", "a line");
      found.known(
          path + "." + one.shift(),
          one.shift(),
          names.shifts.keySet(),
          "no shift",
          "a shift of the calendar");
      if (names.lines.containsKey(one.line()) && names.shifts.containsKey(one.shift())) {
        crew(one, path + "." + one.shift(), plant, found);
      }
    }
  }

  private static void crew(Hands.Attendance one, String path, Plant plant, Problems found) {
    Optional<Crew> crew =
        plant.crews().stream()
            .filter(each -> each.line().equals(one.line()) && each.shift().equals(one.shift()))
            .findFirst();
    if (crew.isEmpty()) {
      found.add(
          path,
          "this line has no crew in this shift",
          "its hands under crews." + one.line() + "." + one.shift());
      return;
    }
    int hands = crew.get().hands();
    if (one.least() > hands) {
      found.add(
          path + ".least",
          "the line asks for " + Counted.of(one.least(), "hand") + " and its crew has " + hands,
          "at most " + hands + ", or a larger crew");
    }
    if (one.own().orElse(0) > hands) {
      found.add(
          path + ".own",
          one.own().get() + " own hands are more than the crew of " + hands,
          "at most " + hands);
    }
    pool(one, path, plant, found);
  }

  private static void pool(Hands.Attendance one, String path, Plant plant, Problems found) {
    one.shares()
        .ifPresent(
            name ->
                found.known(
                    path + ".shares",
                    name,
                    plant.hands().shared().stream()
                        .map(Hands.Shared::name)
                        .collect(Collectors.toSet()),
                    "no shared hands",
                    "a name under hands.shared"));
    if (one.shares().isEmpty() && one.own().isPresent() && one.own().get() < one.least()) {
      found.add(
          path + ".own",
          "fewer own hands than the line asks for, and none that it shares, so it would never run",
          "\"shares\" beside it, or own hands from " + one.least() + " on");
    }
  }
}
