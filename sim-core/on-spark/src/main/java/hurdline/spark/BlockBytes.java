package hurdline.spark;

import hurdline.answer.ChosenLimit;
import hurdline.answer.SimulatedBlock;
import hurdline.study.choose.PlanBlock;
import hurdline.study.replicate.ReplicationRange;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Blocks as bytes: whole numbers, the 64 bits of each value, texts in UTF-8. */
final class BlockBytes {
  private BlockBytes() {}

  /** Writes what it is handed. */
  private interface Writer {
    void to(DataOutputStream out) throws IOException;
  }

  /** Reads something. */
  private interface Reader<T> {
    T from(DataInputStream in) throws IOException;
  }

  static byte[] of(PlanBlock block) {
    return written(
        out -> {
          out.writeInt(block.stage());
          out.writeInt(block.number());
          out.writeInt(block.years().from());
          out.writeInt(block.years().to());
          out.writeBoolean(block.own());
          out.writeBoolean(block.limits());
          out.writeInt(block.plans().size());
          for (int plan : block.plans()) {
            out.writeInt(plan);
          }
        });
  }

  static PlanBlock due(byte[] bytes) {
    return read(
        bytes,
        in -> {
          int stage = in.readInt();
          int number = in.readInt();
          ReplicationRange years = new ReplicationRange(in.readInt(), in.readInt());
          boolean own = in.readBoolean();
          boolean limits = in.readBoolean();
          return new PlanBlock(
              stage, number, list(in, DataInputStream::readInt), years, own, limits);
        });
  }

  static byte[] of(SimulatedBlock block) {
    return written(
        out -> {
          out.writeInt(block.stage());
          out.writeInt(block.number());
          out.writeInt(block.from());
          out.writeInt(block.plans().size());
          for (SimulatedBlock.Plan plan : block.plans()) {
            write(plan, out);
          }
        });
  }

  private static void write(SimulatedBlock.Plan plan, DataOutputStream out) throws IOException {
    out.writeInt(plan.plan());
    write(plan.problem(), out);
    out.writeInt(plan.measured().size());
    for (SimulatedBlock.Series series : plan.measured()) {
      out.writeInt(series.values().length);
      for (double value : series.values()) {
        out.writeLong(Double.doubleToRawLongBits(value));
      }
    }
    out.writeInt(plan.limits().size());
    for (ChosenLimit limit : plan.limits()) {
      write(limit.line(), out);
      write(limit.cause(), out);
      out.writeLong(Double.doubleToRawLongBits(limit.share()));
    }
  }

  static SimulatedBlock simulated(byte[] bytes) {
    return read(
        bytes,
        in ->
            new SimulatedBlock(
                in.readInt(), in.readInt(), in.readInt(), list(in, BlockBytes::plan)));
  }

  private static SimulatedBlock.Plan plan(DataInputStream in) throws IOException {
    return new SimulatedBlock.Plan(
        in.readInt(),
        text(in),
        list(in, BlockBytes::series),
        list(in, from -> new ChosenLimit(text(from), text(from), number(from))));
  }

  private static SimulatedBlock.Series series(DataInputStream in) throws IOException {
    double[] values = new double[in.readInt()];
    for (int at = 0; at < values.length; at++) {
      values[at] = number(in);
    }
    return new SimulatedBlock.Series(values);
  }

  private static <T> List<T> list(DataInputStream in, Reader<T> of) throws IOException {
    int count = in.readInt();
    List<T> all = new ArrayList<>(count);
    for (int at = 0; at < count; at++) {
      all.add(of.from(in));
    }
    return all;
  }

  private static double number(DataInputStream in) throws IOException {
    return Double.longBitsToDouble(in.readLong());
  }

  private static void write(String text, DataOutputStream out) throws IOException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    out.writeInt(bytes.length);
    out.write(bytes);
  }

  private static String text(DataInputStream in) throws IOException {
    return new String(in.readNBytes(in.readInt()), StandardCharsets.UTF_8);
  }

  private static byte[] written(Writer writer) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      writer.to(new DataOutputStream(bytes));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  private static <T> T read(byte[] bytes, Reader<T> reader) {
    try {
      return reader.from(new DataInputStream(new ByteArrayInputStream(bytes)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
