package hurdline.plant.yaml;

import hurdline.plant.Hands;
import hurdline.plant.Hands.Attendance;
import hurdline.plant.Hands.Shared;
import hurdline.unit.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads who comes to work, and hands that lines share. */
final class HandsBinder {
  private HandsBinder() {}

  static Hands hands(NodeReader at) {
    if (!at.isGiven()) {
      return Hands.allCome();
    }
    Fields f = at.fields(MapKeys.HANDS);
    List<Attendance> attendance = new ArrayList<>();
    f.at("attendance")
        .named("line")
        .forEach(
            (line, shifts) ->
                shifts
                    .named("shift")
                    .forEach((shift, one) -> attendance.add(attendance(line, shift, one))));
    return new Hands(attendance, f.at("shared").each("pool", HandsBinder::shared));
  }

  private static Attendance attendance(String line, String shift, NodeReader at) {
    Fields f = at.fields(MapKeys.ATTENDANCE);
    return new Attendance(
        line,
        shift,
        f.has("own") ? Optional.of(Numbers.whole(f.at("own"), 0, 0)) : Optional.empty(),
        Quantities.of(f.at("absence"), Dimension.SHARE, Range.SHARE, 0),
        Numbers.whole(f.at("least"), 1, 1),
        Words.optionalName(f.at("shares"), "shared hands"));
  }

  private static Shared shared(String name, NodeReader at) {
    Fields f = at.fields(MapKeys.SHARED_HANDS);
    return new Shared(
        name,
        Numbers.whole(f.at("hands"), 0, 1),
        Quantities.of(f.at("absence"), Dimension.SHARE, Range.SHARE, 0));
  }
}
