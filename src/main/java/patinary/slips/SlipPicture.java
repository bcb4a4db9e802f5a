package patinary.slips;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.Set;

/** Makes a photo of a slip easier to read: grey, of a sensible size, upright, evenly lit. */
final class SlipPicture {

    /** The steps, so that a measurement can leave one out. */
    enum Step {
        SCALE,
        LIGHT,
        UPRIGHT
    }

    private static final int WIDTH = 1_400;
    private static final double MOST_DEGREES = 4;

    private SlipPicture() {}

    static BufferedImage prepare(BufferedImage photo, Set<Step> steps) {
        double scale = steps.contains(Step.SCALE) ? (double) WIDTH / photo.getWidth() : 1;
        BufferedImage grey = draw(photo, Math.min(scale, 3), 0);
        if (steps.contains(Step.LIGHT)) {
            even(grey);
        }
        if (steps.contains(Step.UPRIGHT)) {
            grey = draw(grey, 1, lean(grey));
        }
        return grey;
    }

    /** The angle, in degrees, at which rows of ink stand out most from the gaps between them. */
    static double lean(BufferedImage grey) {
        double best = 0;
        double most = -1;
        for (double angle = -MOST_DEGREES; angle <= MOST_DEGREES; angle += 0.25) {
            double sharp = sharpness(grey, angle);
            if (sharp > most) {
                most = sharp;
                best = angle;
            }
        }
        return best;
    }

    private static double sharpness(BufferedImage grey, double angle) {
        int step = Math.max(1, grey.getWidth() / 500);
        double slope = Math.tan(Math.toRadians(angle));
        int room = (int) (grey.getWidth() * Math.abs(slope)) + 1;
        double[] rows = new double[grey.getHeight() + 2 * room];
        for (int y = 0; y < grey.getHeight(); y += 2) {
            for (int x = 0; x < grey.getWidth(); x += step) {
                int ink = 255 - grey.getRaster().getSample(x, y, 0);
                if (ink > 90) {
                    rows[(int) (y + room + x * slope)] += ink;
                }
            }
        }
        double sum = 0;
        for (int y = 2; y < rows.length; y++) {
            double change = rows[y] - rows[y - 2];
            sum += change * change;
        }
        return sum;
    }

    /** Divides each point by the light around it: the brightest of its neighbourhood, a block at a time. */
    private static void even(BufferedImage grey) {
        int block = 40;
        int across = grey.getWidth() / block + 1;
        int down = grey.getHeight() / block + 1;
        int[][] light = new int[down][across];
        for (int y = 0; y < grey.getHeight(); y++) {
            for (int x = 0; x < grey.getWidth(); x++) {
                int value = grey.getRaster().getSample(x, y, 0);
                light[y / block][x / block] = Math.max(light[y / block][x / block], value);
            }
        }
        for (int y = 0; y < grey.getHeight(); y++) {
            for (int x = 0; x < grey.getWidth(); x++) {
                double around = between(light, (double) x / block - 0.5, (double) y / block - 0.5);
                int value = (int) (grey.getRaster().getSample(x, y, 0) * 245 / Math.max(around, 40));
                grey.getRaster().setSample(x, y, 0, Math.min(255, value));
            }
        }
    }

    private static double between(int[][] light, double x, double y) {
        int left = Math.max(0, Math.min((int) x, light[0].length - 1));
        int top = Math.max(0, Math.min((int) y, light.length - 1));
        int right = Math.min(left + 1, light[0].length - 1);
        int bottom = Math.min(top + 1, light.length - 1);
        double h = Math.max(0, Math.min(1, x - left));
        double v = Math.max(0, Math.min(1, y - top));
        return (light[top][left] * (1 - h) + light[top][right] * h) * (1 - v)
                + (light[bottom][left] * (1 - h) + light[bottom][right] * h) * v;
    }

    private static BufferedImage draw(BufferedImage from, double scale, double degrees) {
        int width = (int) Math.round(from.getWidth() * scale);
        int height = (int) Math.round(from.getHeight() * scale);
        BufferedImage to = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D pen = to.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, width, height);
        pen.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        pen.rotate(Math.toRadians(degrees), width / 2.0, height / 2.0);
        pen.drawImage(from, 0, 0, width, height, null);
        pen.dispose();
        return to;
    }
}
