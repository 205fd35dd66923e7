package hurdline.answer;

import java.util.List;

/**
 * What in this very plant can hurt someone, and what to ask the fire official before anything is
 * built.
 */
public sealed interface SafetyFact extends Fact {
  /**
   * Crops and fields whose bales are above the limit that the file's warning names.
   *
   * @param crops names of crops and fields
   */
  record WetBales(List<String> crops) implements SafetyFact {
    public WetBales {
      crops = List.copyOf(crops);
    }
  }

  /** Places of the yard in which dry bales may come to be damp. */
  record DampPlaces(List<String> places) implements SafetyFact {
    public DampPlaces {
      places = List.copyOf(places);
    }
  }

  /**
   * Stops that are planned to be over sooner than locking out takes.
   *
   * @param stops {@code machine.stop}
   * @param belowS mean duration below which they are named
   */
  record ShortStops(List<String> stops, double belowS) implements SafetyFact {
    public ShortStops {
      stops = List.copyOf(stops);
    }
  }

  /** Work that is planned with the machine locked out. */
  record LockedOutWork(List<StopsOf> machines) implements SafetyFact {
    public LockedOutWork {
      machines = List.copyOf(machines);
    }
  }

  /** A machine and its stops. */
  record StopsOf(String machine, List<String> stops) {
    public StopsOf {
      stops = List.copyOf(stops);
    }
  }

  /** Machines that make sparks or gather dust. */
  record SparksAndDust(List<String> machines) implements SafetyFact {
    public SparksAndDust {
      machines = List.copyOf(machines);
    }
  }

  /**
   * Shifts that are long or run past midnight.
   *
   * @param aboveS length above which they are named
   */
  record LongShifts(List<String> shifts, double aboveS) implements SafetyFact {
    public LongShifts {
      shifts = List.copyOf(shifts);
    }
  }

  /**
   * A place of the yard as the file has it.
   *
   * @param holds how many, in {@code unit}
   * @param unit {@code bales} or {@code modules}
   * @param perStack of these; 0 where the file does not say how they are stacked
   * @param laneM between stacks; NaN where the file does not say
   */
  record StoredInPlace(
      String place, int holds, String unit, double massKg, int perStack, double laneM)
      implements SafetyFact {}

  /**
   * A bin and what it holds.
   *
   * @param volumeM3 NaN where the file gives a mass
   * @param massKg NaN where the file gives a volume
   */
  record StoredInBin(String bin, double volumeM3, double massKg) implements SafetyFact {}
}
