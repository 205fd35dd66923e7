package hurdline.plant.yaml;

import hurdline.plant.Problem;

/** A problem with its place, and with the change that brought it about where there is one. */
record Finding(Spot place, Problem problem) {

  String line(String file, String because) {
    String where = place.isNowhere() ? file : file + ":" + place.line() + ":" + place.column();
    String path = problem.path().isEmpty() ? "" : " " + problem.path();
    return where + path + ": " + problem.said() + "; expected " + problem.expected() + because;
  }
}
