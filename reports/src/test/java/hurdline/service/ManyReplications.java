package hurdline.service;

import hurdline.answer.RunAnswer;
import hurdline.plant.Change;
import hurdline.study.PlantChanges;
import hurdline.study.replicate.ReplicationRange;
import hurdline.study.replicate.RunSettings;
import hurdline.study.run.RangeResults;
import hurdline.study.run.Run;
import hurdline.table.RecordFile;
import hurdline.table.RunTables;
import hurdline.table.Table;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

/**
 * A program that simulates many replications of the first day of a small plant, in so many ranges,
 * the last one first, and prints how many there were and a digest of every table and the record, of
 * measures.csv the values as they are, which takes less time: {@code ManyReplications FILE
 * REPLICATIONS RANGES}.
 */
final class ManyReplications {
  private static final String DAY = "2027-03-01";

  private ManyReplications() {}

  public static void main(String[] args) throws IOException, NoSuchAlgorithmException {
    int count = Integer.parseInt(args[1]);
    int ranges = Integer.parseInt(args[2]);
    PlantChanges day =
        new PlantChanges(
            PlantChanges.base().option(),
            List.of(),
            List.of(
                new Change.Value("calendar.to", DAY),
                new Change.Value("season.0.to", DAY),
                new Change.Value("yard.on_hand.stalk", "12 bales")));
    RunSettings effort =
        new RunSettings(count, Optional.empty(), 1, ranges == 1 ? 2 : 1, Optional.empty());
    Run run = new EngineStudies().inRanges(PlantText.of(Path.of(args[0])), day, effort);
    RangeResults[] parts = new RangeResults[ranges];
    for (int at = ranges - 1; at >= 0; at--) {
      ReplicationRange range =
          new ReplicationRange(begin(at, ranges, count), begin(at + 1, ranges, count));
      parts[at] = run.simulate(range, (done, of) -> {}, () -> false);
    }
    for (int at = 1; at < ranges; at++) {
      parts[0].append(parts[at]);
      parts[at] = null;
    }
    RunAnswer answer = run.answer(parts[0]);
    System.out.println(answer.header().replications() + " replications, files " + digest(answer));
  }

  private static int begin(int range, int ranges, int count) {
    return 1 + (int) ((long) count * range / ranges);
  }

  private static String digest(RunAnswer answer) throws IOException, NoSuchAlgorithmException {
    MessageDigest digest = MessageDigest.getInstance("SHA-256");
    try (Writer out =
        new BufferedWriter(
            new OutputStreamWriter(
                new DigestOutputStream(OutputStream.nullOutputStream(), digest),
                StandardCharsets.UTF_8))) {
      for (Table table : new RunTables(answer).all()) {
        if (!table.file().equals("measures.csv")) {
          table.write(out);
        }
      }
      RecordFile.write(answer, out);
    }
    ByteBuffer values = ByteBuffer.allocate(Double.BYTES * answer.samples().measures().size());
    for (double[] replication : answer.samples().values()) {
      values.clear().asDoubleBuffer().put(replication);
      digest.update(values);
    }
    return HexFormat.of().formatHex(digest.digest());
  }
}
