package hurdline.web;

import hurdline.web.http.Reply;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.BooleanSupplier;

/**
 * Answers of which a page wants only the newest: one is worked out at a time, and what waits for
 * its turn leaves when the same page has asked again, so that however long one takes, no more than
 * one of each page waits.
 */
final class NewestAsk {
  private static final int MOST_PAGES = 50;
  private static final int LOOKED_EVERY_MS = 50;

  private final ReentrantLock working = new ReentrantLock();
  private final Map<String, Long> newest =
      new LinkedHashMap<>(MOST_PAGES, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Long> eldest) {
          return size() > MOST_PAGES;
        }
      };

  /** What is worked out. */
  @FunctionalInterface
  interface Work {
    /**
     * @param isOlder whether the page has asked for another meanwhile
     */
    Reply done(BooleanSupplier isOlder) throws IOException;
  }

  /** What a page has asked before is not wanted any more; the number of what it asks now. */
  long next(String page) {
    synchronized (newest) {
      return newest.merge(page, 1L, Long::sum);
    }
  }

  private boolean isOlder(String page, long mine) {
    synchronized (newest) {
      return newest.getOrDefault(page, 0L) != mine;
    }
  }

  /**
   * The answer.
   *
   * @param page who asks
   * @param older what is answered where the page has asked again before its turn came
   */
  Reply answer(String page, Work work, Reply older) throws IOException {
    long mine = next(page);
    try {
      while (!isOlder(page, mine)) {
        if (working.tryLock(LOOKED_EVERY_MS, TimeUnit.MILLISECONDS)) {
          try {
            return isOlder(page, mine) ? older : work.done(() -> isOlder(page, mine));
          } finally {
            working.unlock();
          }
        }
      }
    } catch (InterruptedException ended) {
      Thread.currentThread().interrupt();
    }
    return older;
  }
}
