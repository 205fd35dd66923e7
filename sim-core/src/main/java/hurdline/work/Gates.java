package hurdline.work;

import hurdline.line.Layout;

/** Numbers of the hours in which kinds of jobs may begin; gate 0 is always open. */
final class Gates {
  private final int lineFrom;
  private final int machineFrom;
  final int count;

  Gates(Layout layout) {
    lineFrom = 1 + layout.naming.crops.count();
    machineFrom = lineFrom + layout.lines;
    count = machineFrom + layout.machines;
  }

  int always() {
    return 0;
  }

  int receiving(int crop) {
    return 1 + crop;
  }

  int line(int line) {
    return lineFrom + line;
  }

  int machine(int machine) {
    return machineFrom + machine;
  }
}
