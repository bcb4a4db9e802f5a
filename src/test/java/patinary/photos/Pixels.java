package patinary.photos;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;

/** Builds picture files for tests, byte by byte where they must be odd. */
final class Pixels {

    private Pixels() {}

    /** Four fields: red top left, green top right, blue bottom left, white bottom right. */
    static BufferedImage fields(int width, int height) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D canvas = image.createGraphics();
        field(canvas, Color.RED, 0, 0, width / 2, height / 2);
        field(canvas, Color.GREEN, width / 2, 0, width / 2, height / 2);
        field(canvas, Color.BLUE, 0, height / 2, width / 2, height / 2);
        field(canvas, Color.WHITE, width / 2, height / 2, width / 2, height / 2);
        canvas.dispose();
        return image;
    }

    /** A picture that no one can press small. */
    static BufferedImage noise(int width, int height) {
        Random random = new Random(7);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                image.setRGB(x, y, random.nextInt(0x1000000));
            }
        }
        return image;
    }

    static byte[] file(BufferedImage image, String format) {
        try {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            ImageIO.write(image, format, bytes);
            return bytes.toByteArray();
        } catch (IOException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    static byte[] jpeg(int width, int height) {
        return file(fields(width, height), "jpeg");
    }

    /**
     * A JPEG with an Exif segment as a camera writes it (Exif 2.32, TIFF 6.0): orientation, the day, a place and a maker.
     */
    static byte[] jpegWithExif(byte[] jpeg, int orientation) throws IOException {
        byte[] exif = exif(orientation);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.write(jpeg, 0, 2);
        out.writeShort(0xFFE1);
        out.writeShort(2 + 6 + exif.length);
        out.write("Exif\0\0".getBytes(StandardCharsets.US_ASCII));
        out.write(exif);
        out.write(jpeg, 2, jpeg.length - 2);
        return bytes.toByteArray();
    }

    /** A PNG whose head claims a size; what follows is no picture of that size. */
    static byte[] pngClaiming(int width, int height) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeLong(0x89504E470D0A1A0AL);
        ByteArrayOutputStream head = new ByteArrayOutputStream();
        DataOutputStream fields = new DataOutputStream(head);
        fields.writeInt(width);
        fields.writeInt(height);
        fields.write(new byte[] {8, 2, 0, 0, 0});
        chunk(out, "IHDR", head.toByteArray());
        chunk(out, "IDAT", new byte[] {0x78, (byte) 0x9C, 3, 0, 0, 0, 0, 1});
        chunk(out, "IEND", new byte[0]);
        return bytes.toByteArray();
    }

    private static void chunk(DataOutputStream out, String name, byte[] data) throws IOException {
        byte[] type = name.getBytes(StandardCharsets.US_ASCII);
        CRC32 crc = new CRC32();
        crc.update(type);
        crc.update(data);
        out.writeInt(data.length);
        out.write(type);
        out.write(data);
        out.writeInt((int) crc.getValue());
    }

    private static byte[] exif(int orientation) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeBytes("MM");
        out.writeShort(42);
        out.writeInt(8);
        // Main directory: four entries from 8, its end at 62.
        out.writeShort(4);
        entry(out, 0x010F, 2, 6, 62);
        out.writeShort(0x0112);
        out.writeShort(3);
        out.writeInt(1);
        out.writeShort(orientation);
        out.writeShort(0);
        entry(out, 0x8769, 4, 1, 68);
        entry(out, 0x8825, 4, 1, 106);
        out.writeInt(0);
        out.writeBytes("Maker\0");
        // Exif directory at 68: one entry, the day at 86.
        out.writeShort(1);
        entry(out, 0x9003, 2, 20, 86);
        out.writeInt(0);
        out.writeBytes("2025:03:01 10:11:12\0");
        // Place at 106: north, 51 degrees.
        out.writeShort(2);
        out.writeShort(1);
        out.writeShort(2);
        out.writeInt(2);
        out.writeBytes("N\0\0\0");
        entry(out, 2, 5, 3, 136);
        out.writeInt(0);
        for (int part : new int[] {51, 1, 30, 1, 12, 1}) {
            out.writeInt(part);
        }
        return bytes.toByteArray();
    }

    private static void entry(DataOutputStream out, int tag, int type, int count, int value) throws IOException {
        out.writeShort(tag);
        out.writeShort(type);
        out.writeInt(count);
        out.writeInt(value);
    }

    private static void field(Graphics2D canvas, Color color, int x, int y, int width, int height) {
        canvas.setColor(color);
        canvas.fillRect(x, y, width, height);
    }
}
