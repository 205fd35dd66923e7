package hurdline.web;

import hurdline.service.Studies;
import hurdline.web.http.Call;
import hurdline.web.http.LocalServer;
import hurdline.web.http.Reply;
import hurdline.web.http.Site;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The page of one folder, served until it is stopped or nobody has looked at it for long. */
public final class PageServer implements AutoCloseable {
  private static final double IDLE_END_S = 30 * 60;

  private final LocalServer server;
  private final FolderLock lock;
  private final StudyQueue queue;

  private PageServer(LocalServer server, FolderLock lock, StudyQueue queue) {
    this.server = server;
    this.lock = lock;
    this.queue = queue;
  }

  /**
   * Starts to serve a folder, which is made if need be.
   *
   * @param place a folder, or a plant file that is shown first
   * @param port 0 for any that is free
   * @throws AlreadyOpenException if another process serves the folder
   */
  public static PageServer start(Path place, int port, Studies studies) throws IOException {
    OpenedPlace opened = OpenedPlace.of(place);
    PlantFolder folder = new PlantFolder(opened.folder());
    FolderLock lock = FolderLock.take(folder.path());
    try {
      Map<String, Call> calls = new HashMap<>();
      calls.putAll(new FileCalls(folder, opened.file()).all());
      calls.putAll(new TextCalls(studies, folder).all());
      QuickCalls quick = new QuickCalls(studies, folder);
      StudyQueue queue = new StudyQueue();
      AnswerCalls answers = new AnswerCalls(new AnswerList(folder), queue);
      calls.putAll(quick.all());
      calls.putAll(new StudyCalls(folder, queue, quick::secondsPerReplication).all());
      calls.putAll(answers.all());
      calls.put("GET here", ask -> Reply.json(Map.of()));
      calls.replaceAll((name, call) -> FileFault.told(call));
      Site site = Site.of("/hurdline/web", PAGE_FILES, EditorModules.byName());
      LocalServer server = LocalServer.start(port, site, calls, answers::at);
      lock.write(server.port(), server.doorWord());
      return new PageServer(server, lock, queue);
    } catch (IOException | RuntimeException fault) {
      lock.close();
      throw fault;
    }
  }

  /** Scripts, styles and the icon; the page itself is /. */
  private static final List<String> PAGE_FILES =
      List.of(
          "icon.svg",
          "page.css",
          "page.js",
          "call.js",
          "shown.js",
          "editor.js",
          "plant.js",
          "live.js",
          "form.js",
          "ask.js",
          "answers.js");

  /** An address that opens the page once, within two minutes. */
  public String newAddress() {
    return server.newAddress();
  }

  /** Whether nobody has asked anything for half an hour, and no study runs. */
  public boolean isIdle() {
    return server.idleS() > IDLE_END_S && !queue.isBusy();
  }

  /** Whether the address that was given out last has opened no page yet. */
  public boolean awaitsPages() {
    return server.awaitsPages();
  }

  @Override
  public void close() throws IOException {
    server.stop();
    lock.close();
  }
}
