package org.battenbook.picture;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.function.Consumer;

/** Bytes of an image file, piece by piece, with numbers in one byte order; immutable. */
final class ImageBytes {
  private final ByteOrder order;
  private final byte[] all;

  ImageBytes(ByteOrder order) {
    this(order, new byte[0]);
  }

  ImageBytes(ByteOrder order, byte[] all) {
    this.order = order;
    this.all = all;
  }

  int size() {
    return all.length;
  }

  byte[] all() {
    return all.clone();
  }

  /** All bytes, or the first of them where there are more than so many. */
  byte[] upTo(int most) {
    return Arrays.copyOf(all, Math.min(most, all.length));
  }

  ImageBytes cut(int size) {
    return new ImageBytes(order, upTo(size));
  }

  ImageBytes then(ImageBytes other) {
    return thenAll(List.of(other));
  }

  ImageBytes thenAll(List<ImageBytes> others) {
    ByteArrayOutputStream joined = new ByteArrayOutputStream();
    joined.writeBytes(all);
    others.forEach(other -> joined.writeBytes(other.all));
    return new ImageBytes(order, joined.toByteArray());
  }

  ImageBytes times(int count) {
    return new ImageBytes(order).thenAll(Collections.nCopies(count, this));
  }

  ImageBytes text(String letters) {
    return then(new ImageBytes(order, letters.getBytes(StandardCharsets.ISO_8859_1)));
  }

  ImageBytes bytes(int... numbers) {
    return added(numbers.length, to -> Arrays.stream(numbers).forEach(one -> to.put((byte) one)));
  }

  ImageBytes shorts(int... numbers) {
    return added(
        numbers.length * Short.BYTES,
        to -> Arrays.stream(numbers).forEach(one -> to.putShort((short) one)));
  }

  ImageBytes ints(int... numbers) {
    return added(numbers.length * Integer.BYTES, to -> Arrays.stream(numbers).forEach(to::putInt));
  }

  ImageBytes longs(long... numbers) {
    return added(numbers.length * Long.BYTES, to -> Arrays.stream(numbers).forEach(to::putLong));
  }

  private ImageBytes added(int size, Consumer<ByteBuffer> numbers) {
    byte[] bytes = new byte[size];
    numbers.accept(ByteBuffer.wrap(bytes).order(order));
    return then(new ImageBytes(order, bytes));
  }
}
