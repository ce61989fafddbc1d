package org.battenbook.picture;

import static java.nio.ByteOrder.BIG_ENDIAN;
import static java.nio.ByteOrder.LITTLE_ENDIAN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.nio.ByteOrder;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.battenbook.bound.Bound;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Image files that were made to do harm: of all that is in them only the size counts, and what has
 * none is told. Heads of 4 MB would take minutes or the whole memory if anything else were read.
 */
@Timeout(20)
class HostilePictureTest {
  private static final int MOST = Bound.IMAGE_HEAD.mostBytes();
  private static final PictureSize SIZE = new PictureSize(123, 45);
  private static final PictureSize TURNED = new PictureSize(45, 123);

  private static final int WIDTH = 0x100;
  private static final int LENGTH = 0x101;
  private static final int ORIENTATION = 0x112;
  private static final int DIRECTORIES = 0x14a;
  private static final int EXIF_DIRECTORY = 0x8769;
  private static final int QUARTER = 6;

  static Stream<Arguments> images_with_a_size() {
    return Stream.of(jpegs(), gifs(), webps(), tiffs(LITTLE_ENDIAN), tiffs(BIG_ENDIAN))
        .flatMap(all -> all);
  }

  static Stream<Arguments> files_without_a_size() {
    return Stream.of(others(), noJpegs(), noWebps(), noTiffs(LITTLE_ENDIAN), noTiffs(BIG_ENDIAN))
        .flatMap(all -> all);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("images_with_a_size")
  void has_its_size(String name, ImageBytes image, PictureSize size) throws NoPicture {
    assertThat(PictureSize.read(image.upTo(MOST))).isEqualTo(size);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("files_without_a_size")
  void has_no_size(String name, ImageBytes file) {
    assertThatThrownBy(() -> PictureSize.read(file.upTo(MOST)))
        .isInstanceOf(NoPicture.class)
        .hasMessageMatching("(is|tells) .+");
  }

  private static ImageBytes jpeg() {
    return new ImageBytes(BIG_ENDIAN).bytes(0xff, 0xd8);
  }

  private static ImageBytes frame(int across, int down) {
    return segment(0xc0, bigEndian().bytes(8).shorts(down, across).bytes(1, 1, 0x11, 0));
  }

  private static ImageBytes segment(int marker, ImageBytes data) {
    return bigEndian().bytes(0xff, marker).shorts(data.size() + 2).then(data);
  }

  private static ImageBytes exif(ImageBytes directory) {
    return segment(0xe1, bigEndian().text("Exif\0\0").then(tiff(BIG_ENDIAN, 8)).then(directory));
  }

  private static ImageBytes bigEndian() {
    return new ImageBytes(BIG_ENDIAN);
  }

  private static Stream<Arguments> jpegs() {
    ImageBytes turned = directory(BIG_ENDIAN, 8, entry(BIG_ENDIAN, ORIENTATION, QUARTER));
    return Stream.of(
        jpeg("with a million segments", segment(0xe0, bigEndian()).times(1_000_000), SIZE),
        jpeg("with 4 MB of fill bytes", bigEndian().bytes(0xff).times(4_000_000), SIZE),
        jpeg("with metadata nested deeply", nestedMetadata(), SIZE),
        jpeg("with a directory behind itself", exif(turned), TURNED),
        jpeg("with a thousand directories", exif(turned).times(1_000), TURNED),
        jpeg("with a directory that has no end", exif(bigEndian().shorts(0xffff)), SIZE),
        jpeg("with a directory nowhere", exif(bigEndian()), SIZE));
  }

  /** Metadata as XML (ISO 16684-1, XMP), whose elements stand in each other. */
  private static ImageBytes nestedMetadata() {
    String in = "<q:a rdf:parseType='Resource'>".repeat(1_400);
    String out = "</q:a>".repeat(1_400);
    return segment(
        0xe1,
        bigEndian()
            .text("http://ns.adobe.com/xap/1.0/\0<x:xmpmeta xmlns:x='adobe:ns:meta/'>")
            .text("<rdf:RDF xmlns:rdf='http://www.w3.org/1999/02/22-rdf-syntax-ns#'>")
            .text("<rdf:Description xmlns:q='q:'>" + in + out + "</rdf:Description>")
            .text("</rdf:RDF></x:xmpmeta>"));
  }

  private static Arguments jpeg(String name, ImageBytes before, PictureSize size) {
    return arguments("JPEG " + name, jpeg().then(before).then(frame(123, 45)), size);
  }

  private static Stream<Arguments> noJpegs() {
    return Stream.of(
        arguments("JPEG of two bytes", jpeg()),
        arguments("JPEG cut in its size", jpeg().then(frame(123, 45)).cut(8)),
        arguments("JPEG of no extent", jpeg().then(frame(0, 0))),
        arguments("JPEG with a segment of length 0", jpeg().bytes(0xff, 0xe0, 0, 0)),
        arguments("JPEG without a marker", jpeg().bytes(0, 0xc0, 0, 8)),
        arguments("JPEG of its end alone", jpeg().bytes(0xff, 0xd9, 0, 8)),
        arguments(
            "JPEG with 5 MB before its size",
            jpeg()
                .then(segment(0xe1, bigEndian().bytes(0).times(65_000)).times(80))
                .then(frame(123, 45))));
  }

  private static ImageBytes gif(int across, int down) {
    return new ImageBytes(LITTLE_ENDIAN).text("GIF89a").shorts(across, down).bytes(0, 0, 0);
  }

  private static Stream<Arguments> gifs() {
    ImageBytes comment = bigEndian().bytes(0x21, 0xfe, 1, 'A', 0);
    return Stream.of(
        arguments("GIF with 800,000 comments", gif(123, 45).then(comment.times(800_000)), SIZE));
  }

  private static ImageBytes chunk(String name, int length) {
    return new ImageBytes(LITTLE_ENDIAN).text(name).ints(length);
  }

  private static ImageBytes webp() {
    return chunk("RIFF", -1).text("WEBP").then(chunk("VP8X", 10)).bytes(0, 0, 0, 0, 122, 0, 0);
  }

  private static Stream<Arguments> webps() {
    ImageBytes extended = webp().bytes(44, 0, 0);
    return Stream.of(
        arguments("WebP with a chunk of 2 GB", extended.then(chunk("ICCP", 0x7fffffff)), SIZE),
        arguments("WebP with a chunk of 4 GB", extended.then(chunk("EXIF", -1)), SIZE),
        arguments("WebP of chunks", extended.then(chunk("none", 0).times(500_000)), SIZE));
  }

  private static Stream<Arguments> noWebps() {
    return Stream.of(
        arguments("WebP cut in its size", webp()),
        arguments("WebP of no extent", chunk("RIFF", 0).text("WEBP").then(chunk("VP8 ", 10))),
        arguments("WebP of no known kind", chunk("RIFF", 0).text("WEBP").then(chunk("LIST", 0))));
  }

  private static ImageBytes tiff(ByteOrder order, int directory) {
    String letters = order == BIG_ENDIAN ? "MM" : "II";
    return new ImageBytes(order).text(letters).shorts(42).ints(directory);
  }

  private static ImageBytes directory(ByteOrder order, int next, ImageBytes... entries) {
    return new ImageBytes(order).shorts(entries.length).thenAll(List.of(entries)).ints(next);
  }

  /** An entry of one number of 16 bits. */
  private static ImageBytes entry(ByteOrder order, int tag, int value) {
    return new ImageBytes(order).shorts(tag, 3).ints(1).shorts(value, 0);
  }

  /** An entry of numbers of 32 bits: the number where it is one, else where they are. */
  private static ImageBytes entry(ByteOrder order, int tag, int count, int value) {
    return new ImageBytes(order).shorts(tag, 4).ints(count, value);
  }

  private static ImageBytes sized(ByteOrder order, ImageBytes... others) {
    return new ImageBytes(order)
        .shorts(2 + others.length)
        .then(entry(order, WIDTH, 123))
        .then(entry(order, LENGTH, 1, 45))
        .thenAll(List.of(others));
  }

  /** A BigTIFF file of as many entries as it says, two of which are there. */
  private static ImageBytes big(ByteOrder order, long directory, long entries) {
    ImageBytes number = new ImageBytes(order).shorts(16).longs(1, 123);
    ImageBytes other = new ImageBytes(order).shorts(16).longs(1, 45);
    return new ImageBytes(order)
        .text(order == BIG_ENDIAN ? "MM" : "II")
        .shorts(43, 8, 0)
        .longs(directory, entries)
        .shorts(WIDTH)
        .then(number)
        .shorts(LENGTH)
        .then(other)
        .longs(directory);
  }

  private static Stream<Arguments> tiffs(ByteOrder order) {
    ImageBytes head = tiff(order, 8);
    ImageBytes below = entry(order, EXIF_DIRECTORY, 1, 8);
    ImageBytes huge = new ImageBytes(order).shorts(0x927c, 7).ints(0x7fffffff, 8);
    ImageBytes copies = new ImageBytes(order).shorts(0x9286, 7).ints(3_000_000, 8);
    return Stream.of(
        arguments(order + " directory behind itself", head.then(sized(order)).ints(8), SIZE),
        arguments(order + " directory below itself", head.then(sized(order, below)).ints(0), SIZE),
        arguments(order + " value of 2 GB", head.then(sized(order, huge)).ints(0), SIZE),
        arguments(
            order + " 60,000 values of 3 MB",
            head.shorts(60_002)
                .then(copies.times(60_000))
                .then(entry(order, WIDTH, 123))
                .then(entry(order, LENGTH, 45)),
            SIZE),
        arguments(
            order + " 50,000 directories below",
            head.then(sized(order, entry(order, DIRECTORIES, 50_000, 50)))
                .ints(0)
                .then(new ImageBytes(order).ints(8).times(50_000)),
            SIZE),
        arguments(
            order + " chain of directories",
            head.then(sized(order)).ints(38).then(chain(order, 38, 200_000)),
            SIZE),
        arguments(order + " of 64 bits", big(order, 16, 2), SIZE),
        arguments(order + " of 64 bits, too many entries", big(order, 16, Long.MAX_VALUE), SIZE));
  }

  /** Directories, each of which names the next as behind it and below it. */
  private static ImageBytes chain(ByteOrder order, int start, int count) {
    return new ImageBytes(order)
        .thenAll(
            IntStream.rangeClosed(1, count)
                .map(i -> start + 18 * i)
                .mapToObj(next -> directory(order, next, entry(order, DIRECTORIES, 1, next)))
                .toList());
  }

  private static Stream<Arguments> noTiffs(ByteOrder order) {
    return Stream.of(
        arguments(order + " cut in its size", tiff(order, 8).then(sized(order)).cut(24)),
        arguments(order + " of no extent", tiff(order, 8).then(directory(order, 0))),
        arguments(
            order + " of more than 2^31",
            tiff(order, 8)
                .shorts(2)
                .then(entry(order, WIDTH, 1, -1))
                .then(entry(order, LENGTH, 1, 1 << 31))),
        arguments(order + " past the end", tiff(order, 0x7fffffff).then(sized(order))),
        arguments(order + " before the beginning", tiff(order, -8).then(sized(order))),
        arguments(order + " in its own head", tiff(order, 0).then(sized(order))),
        arguments(order + " of another version", new ImageBytes(order).text("IIMM").ints(8)),
        arguments(order + " of 64 bits, past the end", big(order, Long.MAX_VALUE, 2)),
        arguments(order + " of 64 bits, before the beginning", big(order, -1, 2)),
        arguments(order + " of 64 bits, entries below 0", big(order, 16, -1)));
  }

  private static ImageBytes bmp(int header, int across, int down) {
    return new ImageBytes(LITTLE_ENDIAN).text("BM").ints(0, 0, 0, header, across, down);
  }

  private static Stream<Arguments> others() {
    ImageBytes boxes = bigEndian().ints(4_000_000).text("moov").times(500_000);
    return Stream.of(
        arguments("nothing", bigEndian()),
        arguments("GIF of no extent", gif(0, 0)),
        arguments("GIF cut in its size", gif(123, 45).cut(9)),
        arguments("BMP of no extent", bmp(40, 0, 0)),
        arguments("BMP of the lowest height", bmp(40, 123, 1 << 31)),
        arguments("BMP with a header of 2 GB", bmp(0x7fffffff, 123, 45)),
        arguments("text", bigEndian().text("BMP, as the name of this file says, it is not")),
        arguments(
            "film nested deeply", bigEndian().ints(24).text("ftypisom").ints(0, 0, 0).then(boxes)));
  }
}
