package hurdline.web;

import static org.assertj.core.api.Assertions.assertThat;

import hurdline.web.http.Reply;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(value = 1, unit = TimeUnit.MINUTES, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class NewestAskTest {
  private static final Reply OLDER = Reply.json("older");

  private final NewestAsk newest = new NewestAsk();

  private static String said(Reply reply) {
    return new String(reply.bytes(), StandardCharsets.UTF_8);
  }

  private CompletableFuture<String> asked(String page, NewestAsk.Work work) {
    return CompletableFuture.supplyAsync(
        () -> {
          try {
            return said(newest.answer(page, work, OLDER));
          } catch (IOException e) {
            throw new AssertionError(e);
          }
        },
        task -> new Thread(task).start());
  }

  /** Were each to wait for the one that lasts, all requests of the page would soon be taken up. */
  @Test
  void whileOneLastsOnlyTheNewestOfAPageWaits() throws Exception {
    CountDownLatch begun = new CountDownLatch(1);
    CountDownLatch end = new CountDownLatch(1);
    CompletableFuture<String> lasting =
        asked(
            "a",
            isOlder -> {
              begun.countDown();
              await(end);
              return Reply.json("first " + isOlder.getAsBoolean());
            });
    begun.await();
    List<CompletableFuture<String>> waiting = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      String name = "later " + i;
      CompletableFuture<String> next = asked("a", isOlder -> Reply.json(name));
      if (!waiting.isEmpty()) {
        assertThat(waiting.get(waiting.size() - 1).get(20, TimeUnit.SECONDS))
            .isEqualTo("\"older\"");
      }
      waiting.add(next);
      Thread.sleep(5);
    }
    end.countDown();
    assertThat(lasting.get()).isEqualTo("\"first true\"");
    assertThat(waiting.get(19).get()).isEqualTo("\"later 19\"");
  }

  @Test
  void whatOnePageAsksMakesNothingOfAnotherOlder() throws Exception {
    CountDownLatch begun = new CountDownLatch(1);
    CountDownLatch end = new CountDownLatch(1);
    CompletableFuture<String> first =
        asked(
            "a",
            isOlder -> {
              begun.countDown();
              await(end);
              return Reply.json("a is older: " + isOlder.getAsBoolean());
            });
    begun.await();
    CompletableFuture<String> other = asked("b", isOlder -> Reply.json("b"));
    newest.next("c");
    end.countDown();
    assertThat(first.get()).isEqualTo("\"a is older: false\"");
    assertThat(other.get()).isEqualTo("\"b\"");
  }

  private static void await(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      throw new AssertionError(e);
    }
  }
}
