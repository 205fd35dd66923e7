package hurdline.plant;

import java.util.HashSet;
import java.util.Set;

/** Which components may ever be in a line: those of its crop and what breaks makes of them. */
final class ComponentPresence {
  private ComponentPresence() {}

  /** Components that may occur in the line, those of lines with which it shares a bin included. */
  static Set<String> in(Line line, Plant plant, Names names) {
    Set<String> present = new HashSet<>();
    for (Line other : plant.lines()) {
      if (other == line || sharesBin(line, other, names)) {
        crop(other.crop(), plant, present);
        broken(other, names, present);
      }
    }
    return present;
  }

  private static boolean sharesBin(Line line, Line other, Names names) {
    return line.steps().stream()
        .anyMatch(
            step -> names.isBin(step.machine()) && Names.step(other, step.machine()).isPresent());
  }

  private static void crop(String crop, Plant plant, Set<String> present) {
    plant.forms(crop).forEach(c -> grown(c.bale(), present));
    plant.deliveries().stream()
        .filter(delivery -> plant.baseOf(delivery.crop()).equals(crop))
        .forEach(delivery -> delivery.fields().forEach(field -> grown(field.bale(), present)));
  }

  private static void grown(Bale bale, Set<String> present) {
    bale.composition()
        .forEach(
            (name, share) -> {
              if (share > 0) {
                present.add(name);
              }
            });
  }

  private static void broken(Line line, Names names, Set<String> present) {
    boolean more = true;
    while (more) {
      more = false;
      for (Step step : line.steps()) {
        more |=
            step.breaks().stream()
                .anyMatch(
                    b -> b.share() > 0 && present.contains(b.component()) && present.add(b.into()));
        more |= finesOf(step, names) && present.contains("hurd") && present.add("fines");
      }
    }
  }

  /** Whether some screen of the step's mill turns hurd into fines. */
  static boolean finesOf(Step step, Names names) {
    return names.mill(step.machine()).stream()
        .anyMatch(mill -> mill.screens().stream().anyMatch(screen -> screen.fines() > 0));
  }
}
