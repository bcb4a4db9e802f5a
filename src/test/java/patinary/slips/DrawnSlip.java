package patinary.slips;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.ConvolveOp;
import java.awt.image.Kernel;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** An invented slip drawn by the test, with the truth about it, and a photo's faults put on it by a seeded generator. */
public final class DrawnSlip {

    private static final List<String> SHOPS = List.of(
            "Harbor Lane Thrift", "Old Mill Attic", "Tin Lantern Barn", "Second Cup House", "Brass Button Market");
    private static final List<String> THINGS = List.of(
            "Oak side table",
            "Brass candle holder",
            "Blue glass vase",
            "Picture frame",
            "Wicker basket",
            "Small mirror",
            "Paint brush set",
            "Chalk paint 500 ml",
            "Wooden tray",
            "Enamel jug");
    private static final List<String> FONTS =
            List.of("DejaVu Sans Mono", "Liberation Mono", "DejaVu Sans", "Liberation Sans", "DejaVu Serif");

    final String shop;
    final LocalDate date;
    final List<Slip.Item> items = new ArrayList<>();
    long total;
    private final List<String[]> rows = new ArrayList<>();
    private final int layout;
    private final Random random;

    public DrawnSlip(int layout) {
        this.layout = layout;
        random = new Random(4_100 + layout);
        shop = SHOPS.get(layout % SHOPS.size());
        date = LocalDate.of(2026, 1 + random.nextInt(12), 1 + random.nextInt(28));
        write();
    }

    private void write() {
        row(shop, "");
        row("12 Invented Street", "");
        row((layout % 2 == 0 ? "Date: " : "") + written(), "");
        row("", "");
        long sum = 0;
        for (int i = 0; i < 3 + layout % 4; i++) {
            sum += thing(THINGS.get((layout * 3 + i) % THINGS.size()), i);
        }
        row("", "");
        boolean taxed = layout % 3 != 1;
        if (taxed) {
            row("Subtotal", money(sum));
        }
        if (taxed && layout % 4 == 0) {
            row("Discount", "-" + money(200));
            sum -= 200;
        }
        long tax = taxed ? Math.round(sum * 0.07) : 0;
        if (taxed) {
            row(layout % 2 == 0 ? "Sales tax 7%" : "VAT 7%", money(tax));
        }
        total = sum + tax;
        row(layout % 5 == 0 ? "Amount due" : "TOTAL", money(total));
        row("Cash", money((total / 1000 + 1) * 1000));
        row("Change", money((total / 1000 + 1) * 1000 - total));
        row("Thank you", "");
    }

    private long thing(String name, int at) {
        String title = layout % 4 == 1 ? name.toUpperCase(Locale.ROOT) : name;
        int quantity = at % 3 == 1 ? 2 + random.nextInt(3) : 1;
        long price = 150 + random.nextInt(4_000);
        long net = price * quantity;
        if (quantity == 1) {
            row(title, money(net));
        } else if (layout % 3 == 0) {
            row(quantity + " x " + title, money(net));
        } else if (layout % 3 == 1) {
            row(title, "");
            row("  " + quantity + " x " + money(price), money(net));
        } else {
            row(title + "  " + quantity + " @ " + money(price), money(net));
        }
        boolean cheaper = layout % 5 == 2 && at == 0;
        if (cheaper) {
            row("  Markdown", "-" + money(50));
        }
        items.add(new Slip.Item(title, quantity, price, net, cheaper ? 50 : 0, 100));
        return net - (cheaper ? 50 : 0);
    }

    private void row(String left, String right) {
        rows.add(new String[] {left, right});
    }

    private String money(long minor) {
        String digits = minor / 100 + (layout % 3 == 2 ? "," : ".") + String.format(Locale.ROOT, "%02d", minor % 100);
        return layout % 6 == 2 ? digits + " \u20ac" : layout % 2 == 0 ? "$" + digits : digits;
    }

    private String written() {
        String month = date.getMonth().name().substring(0, 1)
                + date.getMonth().name().substring(1, 3).toLowerCase(Locale.ROOT);
        return switch (layout % 5) {
            case 0 -> date.toString();
            case 1 -> "%02d/%02d/%d".formatted(date.getMonthValue(), date.getDayOfMonth(), date.getYear());
            case 2 -> "%02d.%02d.%d".formatted(date.getDayOfMonth(), date.getMonthValue(), date.getYear());
            case 3 -> "%d %s %d".formatted(date.getDayOfMonth(), month, date.getYear());
            default -> "%s %d, %d".formatted(month, date.getDayOfMonth(), date.getYear());
        };
    }

    /** The slip as a photo shows it: leaning up to 3 degrees, blurred, noisy, lit from one side. */
    public BufferedImage photo() {
        int width = layout % 2 == 0 ? 760 : 1_000;
        Font font = new Font(FONTS.get(layout % FONTS.size()), Font.PLAIN, layout % 2 == 0 ? 25 : 27);
        BufferedImage picture = new BufferedImage(width, 120 + rows.size() * 42, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D pen = picture.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, width, picture.getHeight());
        pen.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        pen.setColor(new Color(45, 45, 45));
        pen.rotate(Math.toRadians(random.nextDouble() * 6 - 3), width / 2.0, picture.getHeight() / 2.0);
        for (int i = 0; i < rows.size(); i++) {
            pen.setFont(i == 0 ? font.deriveFont(Font.BOLD, 34f) : font);
            String[] row = rows.get(i);
            int y = 80 + i * 42;
            int right = width - 50 - pen.getFontMetrics().stringWidth(row[1]);
            pen.drawString(row[0], 50, y);
            pen.drawString(row[1], right, y);
            if (layout % 7 == 3 && !row[1].isEmpty()) {
                int from = 70 + pen.getFontMetrics().stringWidth(row[0]);
                int dots =
                        Math.max(0, (right - 20 - from) / pen.getFontMetrics().charWidth('.'));
                pen.drawString(".".repeat(dots), from, y);
            }
        }
        pen.dispose();
        return spoilt(picture);
    }

    private BufferedImage spoilt(BufferedImage clean) {
        float[] even = new float[9];
        Arrays.fill(even, 1 / 9f);
        BufferedImage photo = new ConvolveOp(new Kernel(3, 3, even), ConvolveOp.EDGE_NO_OP, null).filter(clean, null);
        double dark = 0.35 + random.nextDouble() * 0.2;
        for (int y = 0; y < photo.getHeight(); y++) {
            for (int x = 0; x < photo.getWidth(); x++) {
                double light = 1 - dark * x / photo.getWidth();
                double value = photo.getRaster().getSample(x, y, 0) * light + random.nextGaussian() * 8;
                photo.getRaster().setSample(x, y, 0, (int) Math.max(0, Math.min(255, value)));
            }
        }
        return photo;
    }
}
