package hurdline.web;

import hurdline.web.http.Refusal;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** Studies one at a time, so that each has the whole machine; a few wait. */
final class StudyQueue {
  private static final int MOST_WAITING = 8;
  private static final int KEPT = 30;

  private final List<StudyProcess> all = new ArrayList<>();

  /**
   * Adds a study, and starts it where none is running.
   *
   * @throws Refusal if too many wait
   */
  synchronized void add(StudyProcess study) {
    long waiting = all.stream().filter(s -> s.state() == StudyProcess.State.WAITING).count();
    if (waiting >= MOST_WAITING) {
      throw new Refusal(429, "Eight studies are waiting; wait until one is done, or stop one.");
    }
    all.add(study);
    while (all.size() > KEPT && all.get(0).isOver()) {
      all.remove(0);
    }
    next();
  }

  private synchronized void next() {
    boolean busy = all.stream().anyMatch(s -> s.state() == StudyProcess.State.RUNNING);
    if (!busy) {
      all.stream()
          .filter(s -> s.state() == StudyProcess.State.WAITING)
          .findFirst()
          .ifPresent(study -> study.start(this::next));
    }
  }

  synchronized List<StudyProcess.Shown> shown() {
    return all.stream().map(StudyProcess::shown).toList();
  }

  synchronized boolean isBusy() {
    return all.stream().anyMatch(study -> !study.isOver());
  }

  /** The folders that studies still write into. */
  synchronized List<String> unfinished() {
    return all.stream()
        .filter(study -> !study.isOver())
        .map(study -> study.answer().getFileName().toString())
        .toList();
  }

  void stop(String id) throws IOException {
    StudyProcess study;
    synchronized (this) {
      study =
          all.stream()
              .filter(one -> one.id().equals(id))
              .findFirst()
              .orElseThrow(Refusal::notThere);
    }
    study.stop();
  }
}
