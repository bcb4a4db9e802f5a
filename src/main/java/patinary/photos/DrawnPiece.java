package patinary.photos;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.util.Random;

/** Draws an invented piece: a simple thing on a bench before a wall, in the colors of a look. The same words, the same drawing. */
final class DrawnPiece {

    private static final int WIDTH = 900;
    private static final int HEIGHT = 720;
    private static final Color INK = new Color(0x4A3A30);
    private static final Color[][] LOOKS = {
        {new Color(0x6F8F72), new Color(0xC9A24B)},
        {new Color(0xE6DECB), new Color(0x9B8467)},
        {new Color(0x2F3F5C), new Color(0xC56B4E)},
        {new Color(0xCBBFA6), new Color(0x7C8C84)},
        {new Color(0xA9573A), new Color(0xD9A5A0)},
        {new Color(0xB98A55), new Color(0x7A5430)},
    };
    private static final Color[] RAW = {new Color(0xA98F74), new Color(0x8A725A)};

    private final BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    private final Graphics2D canvas = image.createGraphics();
    private final Random random;
    private final Color body;
    private final Color trim;

    private DrawnPiece(String kind, String style, boolean finished) {
        random = new Random((kind + style + finished).hashCode());
        Color[] look = finished ? LOOKS[Math.floorMod(style.hashCode(), LOOKS.length)] : RAW;
        body = look[0];
        trim = look[1];
        canvas.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        canvas.setStroke(new BasicStroke(5, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    }

    static BufferedImage draw(String kind, String style, boolean finished) {
        DrawnPiece drawing = new DrawnPiece(kind, style, finished);
        drawing.room();
        drawing.thing(kind);
        if (!finished) {
            drawing.scratches();
        }
        drawing.canvas.dispose();
        return drawing.image;
    }

    private void room() {
        canvas.setPaint(new GradientPaint(0, 0, new Color(0xF4E9D8), 0, HEIGHT, new Color(0xE2CFB4)));
        canvas.fillRect(0, 0, WIDTH, HEIGHT);
        canvas.setPaint(new GradientPaint(0, 560, new Color(0xC7A179), 0, HEIGHT, new Color(0x9D7750)));
        canvas.fillRect(0, 560, WIDTH, HEIGHT - 560);
        canvas.setPaint(new Color(0x40342C1F, true));
        canvas.fill(new Ellipse2D.Double(170, 575, 560, 70));
    }

    private void thing(String kind) {
        switch (kind) {
            case "Tray" -> tray();
            case "Side table", "Stool" -> table(kind.equals("Stool") ? 280 : 420);
            case "Mirror", "Picture frame" -> frame(kind.equals("Mirror"));
            case "Pair of candle holders" -> holders();
            case "Small chest of drawers" -> drawers(3);
            case "Lamp base" -> lamp();
            case "Wall shelf" -> shelf();
            case "Crate" -> drawers(0);
            default -> drawers(1);
        }
    }

    private void tray() {
        fill(new Ellipse2D.Double(180, 400, 540, 210), trim);
        fill(new Ellipse2D.Double(180, 380, 540, 200), body);
        fill(new Ellipse2D.Double(230, 405, 440, 145), body.brighter());
        flowers(450, 475, 3);
    }

    private void table(int width) {
        int left = (WIDTH - width) / 2;
        leg(left + 30, 330, -1);
        leg(left + width - 70, 330, 1);
        fill(box(left - 25, 285, width + 50, 45, 20), body);
        fill(box(left + 5, 330, width - 10, 60, 8), trim);
        line(left + 30, 360, left + width - 30, 360);
    }

    private void leg(int x, int top, int lean) {
        Path2D leg = new Path2D.Double();
        leg.moveTo(x, top);
        leg.lineTo(x + 40, top);
        leg.lineTo(x + 30 + lean * 18, 610);
        leg.lineTo(x + 10 + lean * 18, 610);
        leg.closePath();
        fill(leg, body);
    }

    private void frame(boolean glass) {
        fill(box(270, 130, 360, 480, 40), body);
        fill(box(310, 170, 280, 400, 26), trim);
        fill(box(335, 195, 230, 350, 16), glass ? new Color(0xD3E1E2) : new Color(0xF7F0E2));
        if (glass) {
            line(380, 430, 500, 250);
            line(420, 460, 530, 300);
        } else {
            flowers(450, 390, 5);
        }
    }

    private void holders() {
        for (int x : new int[] {300, 520}) {
            fill(box(x + 25, 190, 40, 170, 8), new Color(0xF6EBD5));
            fill(new Ellipse2D.Double(x - 5, 345, 100, 40), trim);
            fill(box(x + 25, 365, 40, 190, 20), body);
            fill(new Ellipse2D.Double(x - 15, 535, 120, 65), body);
        }
    }

    private void drawers(int rows) {
        int top = rows > 1 ? 210 : 360;
        int height = 600 - top;
        fill(box(240, top, 420, height, 14), body);
        fill(box(220, top - 28, 460, 40, 12), trim);
        int shown = Math.max(rows, 1);
        for (int i = 0; i < shown; i++) {
            int y = top + 30 + i * (height - 30) / shown;
            fill(box(268, y, 364, (height - 30) / shown - 22, 10), rows == 0 ? body.darker() : body.brighter());
            fill(new Ellipse2D.Double(436, y + (height - 30) / shown / 2.0 - 28, 28, 28), trim);
        }
        if (rows == 0) {
            line(240, 480, 660, 480);
            line(240, 430, 660, 430);
        }
    }

    private void lamp() {
        Path2D shade = new Path2D.Double();
        shade.moveTo(360, 150);
        shade.lineTo(540, 150);
        shade.lineTo(620, 340);
        shade.lineTo(280, 340);
        shade.closePath();
        fill(shade, new Color(0xF3E3BE));
        fill(box(430, 340, 40, 60, 6), trim);
        fill(new Ellipse2D.Double(355, 385, 190, 210), body);
        fill(box(380, 575, 140, 30, 12), trim);
        flowers(450, 490, 3);
    }

    private void shelf() {
        fill(box(220, 240, 460, 34, 8), trim);
        fill(box(250, 274, 26, 230, 6), body);
        fill(box(624, 274, 26, 230, 6), body);
        fill(box(220, 400, 460, 30, 8), trim);
        fill(box(220, 500, 460, 34, 8), body);
        fill(box(330, 330, 60, 70, 10), body.brighter());
        fill(box(420, 350, 90, 50, 8), trim.brighter());
    }

    private void flowers(int x, int y, int number) {
        for (int i = 0; i < number; i++) {
            double turn = 2 * Math.PI * i / number + random.nextDouble();
            double px = x + Math.cos(turn) * 62;
            double py = y + Math.sin(turn) * 34;
            for (int leaf = 0; leaf < 5; leaf++) {
                double at = 2 * Math.PI * leaf / 5;
                canvas.setPaint(trim);
                canvas.fill(new Ellipse2D.Double(px + Math.cos(at) * 13 - 10, py + Math.sin(at) * 13 - 10, 20, 20));
            }
            canvas.setPaint(new Color(0xF6E2A6));
            canvas.fill(new Ellipse2D.Double(px - 7, py - 7, 14, 14));
        }
    }

    private void scratches() {
        canvas.setStroke(new BasicStroke(2.5f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        for (int i = 0; i < 12; i++) {
            int x = 300 + random.nextInt(300);
            int y = 330 + random.nextInt(240);
            line(x, y, x + random.nextInt(60) - 20, y + random.nextInt(24) - 12);
        }
    }

    private static Shape box(double x, double y, double width, double height, double round) {
        return new RoundRectangle2D.Double(x, y, width, height, round, round);
    }

    private void fill(Shape shape, Color color) {
        canvas.setPaint(color);
        canvas.fill(shape);
        canvas.setPaint(INK);
        canvas.draw(shape);
    }

    private void line(int x, int y, int toX, int toY) {
        canvas.setPaint(INK);
        canvas.drawLine(x, y, toX, toY);
    }
}
