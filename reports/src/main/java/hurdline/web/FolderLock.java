package hurdline.web;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;

/**
 * One server for a folder: a locked file in it that names the server's port and its word. The
 * system gives the lock back however the process ends; the file may be read by its owner alone.
 */
final class FolderLock implements AutoCloseable {
  private static final String NAME = ".hurdline-open";

  /** Behind all that is written, so that a locked file can still be read on every system. */
  private static final long PLACE = 1 << 20;

  private final Path file;
  private final FileChannel channel;
  private final FileLock lock;

  private FolderLock(Path file, FileChannel channel, FileLock lock) {
    this.file = file;
    this.channel = channel;
    this.lock = lock;
  }

  static FolderLock take(Path folder) throws IOException {
    Path file = folder.resolve(NAME);
    FileChannel channel =
        FileChannel.open(
            file,
            StandardOpenOption.CREATE,
            StandardOpenOption.READ,
            StandardOpenOption.WRITE,
            LinkOption.NOFOLLOW_LINKS);
    try {
      if (file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
      }
      FileLock lock = channel.tryLock(PLACE, 1, false);
      if (lock != null) {
        return new FolderLock(file, channel, lock);
      }
    } catch (OverlappingFileLockException sameProcess) {
      // Told below.
    }
    channel.close();
    throw other(file);
  }

  private static IOException other(Path file) throws IOException {
    String[] said = Files.readString(file).strip().split(" ");
    return said.length == 2 && said[0].matches("[0-9]{1,5}")
        ? new AlreadyOpenException(Integer.parseInt(said[0]), said[1])
        : new IOException("another hurdline is just opening this folder; try again in a moment");
  }

  void write(int port, String word) throws IOException {
    channel.truncate(0);
    byte[] said = (port + " " + word + "\n").getBytes(StandardCharsets.US_ASCII);
    channel.write(ByteBuffer.wrap(said), 0);
    channel.force(true);
  }

  @Override
  public void close() throws IOException {
    Files.deleteIfExists(file);
    lock.release();
    channel.close();
  }
}
