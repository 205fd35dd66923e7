package hurdline.simulation.yard;

import hurdline.compiled.CompiledLines;

/** Numbers of the hours in which kinds of jobs may begin; gate 0 is always open. */
public final class StartHours {
  private final int lineFrom;
  private final int machineFrom;
  public final int count;

  public StartHours(CompiledLines layout) {
    lineFrom = 1 + layout.naming.crops.count();
    machineFrom = lineFrom + layout.lines;
    count = machineFrom + layout.machines;
  }

  public int always() {
    return 0;
  }

  public int receiving(int crop) {
    return 1 + crop;
  }

  public int line(int line) {
    return lineFrom + line;
  }

  public int machine(int machine) {
    return machineFrom + machine;
  }
}
