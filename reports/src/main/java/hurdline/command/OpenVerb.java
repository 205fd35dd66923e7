package hurdline.command;

import hurdline.web.AlreadyOpenException;
import hurdline.web.BrowserStart;
import hurdline.web.PageServer;
import java.io.IOException;
import java.net.BindException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;

@CommandLine.Command(
    name = "open",
    customSynopsis = "hurdline open [FOLDER|FILE] [FLAG]...",
    description =
        "Opens the plants of a folder in your browser: edit them, see at once what is wrong and what"
            + " limits the line. The page is for this machine and you alone.",
    sortOptions = false,
    optionListHeading = "%nFlags:%n",
    parameterListHeading = "%n",
    footer = {
      "",
      "Ctrl-C ends it; it ends by itself half an hour after the last page is closed.",
      "Files in the folder stay what they are; a change is written when you save it.",
      "",
      "Examples:",
      "  hurdline open my-plants",
      "        the folder is made if need be; an empty one offers plants to start from",
      "  hurdline open my-plants/small.yaml --no-browser",
      "        prints the address of the page, which works once within two minutes"
    })
final class OpenVerb implements Callable<Integer> {
  private static final int HIGHEST_PORT = 65_535;
  private static final int LOOKED_EVERY_MS = 200;

  private final CommandContext setting;

  @CommandLine.Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "FOLDER|FILE",
      defaultValue = ".",
      description = "The folder with plant files, or one of them. Default: this folder.")
  private Path place;

  @CommandLine.Option(
      names = "--port",
      paramLabel = "N",
      defaultValue = "0",
      description = "The port to listen on, on this machine only. Default: any that is free.")
  private int port;

  @CommandLine.Option(
      names = "--no-browser",
      description = "Prints the page's address and starts no browser.")
  private boolean noBrowser;

  @CommandLine.Mixin private HelpFlag help;

  OpenVerb(CommandContext setting) {
    this.setting = setting;
  }

  @Override
  public Integer call() throws IOException {
    if (port < 0 || port > HIGHEST_PORT) {
      throw new CallException("--port " + port + " is no port; expected 1 to 65535");
    }
    try (PageServer server = PageServer.start(place, port, setting.studies())) {
      serve(server);
      return ExitCode.DONE.number();
    } catch (AlreadyOpenException other) {
      show(other.newAddress());
      return ExitCode.DONE.number();
    } catch (BindException taken) {
      throw new CallException(
          "--port " + port + " cannot be listened on; name another, or none for any that is free");
    } catch (NotDirectoryException file) {
      throw new CallException(file.getFile() + " is no folder and no plant file; name one");
    } catch (AccessDeniedException closed) {
      throw new CallException(
          closed.getFile() + " may not be written; open a folder that is yours");
    } catch (FileSystemException fault) {
      throw new CallException(
          place
              + " cannot be opened ("
              + fault.getMessage()
              + "); open a folder that can be written and has room");
    }
  }

  private void serve(PageServer server) throws IOException {
    try (StopRequest stop = new StopRequest(() -> setting.err().println("Closed."))) {
      Optional<BrowserStart> door = show(server.newAddress());
      setting.err().println("Ctrl-C ends it.");
      while (!stop.isAsked() && !server.isIdle()) {
        Thread.sleep(LOOKED_EVERY_MS);
        if (door.isPresent() && !server.awaitsPages()) {
          door.get().close();
          door = Optional.empty();
        }
      }
      if (door.isPresent()) {
        door.get().close();
      }
    } catch (InterruptedException ended) {
      Thread.currentThread().interrupt();
    }
  }

  /** Opens the browser where there is one; the address is printed in any case. */
  private Optional<BrowserStart> show(String address) {
    setting.out().println("hurdline is open at " + address);
    if (noBrowser || !BrowserStart.isPossible(System.getenv())) {
      return Optional.empty();
    }
    try {
      Path folder = place.toFile().isDirectory() ? place : place.toAbsolutePath().getParent();
      return Optional.of(BrowserStart.at(folder, address));
    } catch (IOException none) {
      setting.err().println("No browser could be started; open the address above in one.");
      return Optional.empty();
    }
  }
}
