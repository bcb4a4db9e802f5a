package patinary.web;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/** Draws the pictures for home screens anew from the shop's mark. Run after the mark has changed; needs Chromium. */
final class Icons {

    private static final Path PICTURES = Path.of("src", "main", "resources", "static", "img");
    private static final String FRAME = "<rect width=\"32\" height=\"32\" rx=\"7\" fill=\"#fffaf1\"/>";

    private Icons() {}

    public static void main(String[] arguments) throws IOException {
        String mark = Files.readString(PICTURES.resolve("mark.svg"));
        String drawing = mark.replaceFirst("(?s)^<svg[^>]*>", "").replace("</svg>", "");
        if (!drawing.contains(FRAME)) {
            throw new IllegalStateException("The mark has another frame: look at it and change this class.");
        }
        String bare = drawing.replace(FRAME, "");
        // Where the phone cuts the picture to its own shape: no rounded frame. For the widest cut the drawing keeps to
        // the
        // inner circle of 80 % of the width (W3C Web Application Manifest, safe zone of a maskable icon).
        String full = "<rect width=\"32\" height=\"32\" fill=\"#fffaf1\"/>" + bare;
        String inner = "<rect width=\"32\" height=\"32\" fill=\"#fffaf1\"/>"
                + "<g transform=\"translate(16 16) scale(.76) translate(-16 -15.6)\">" + bare + "</g>";
        try (Playwright playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")))) {
            Browser browser = patinary.testing.Browser.launch(playwright);
            draw(browser, drawing, 192, "icon-192.png");
            draw(browser, drawing, 512, "icon-512.png");
            draw(browser, inner, 512, "icon-maskable-512.png");
            draw(browser, full, 180, "icon-180.png");
        }
    }

    private static void draw(Browser browser, String drawing, int side, String name) {
        try (Page page = browser.newPage()) {
            page.setViewportSize(side, side);
            page.setContent(
                    "<body style=\"margin:0\"><svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 32 32\" width=\""
                            + side + "\" height=\"" + side + "\" style=\"display:block\">" + drawing + "</svg>");
            page.screenshot(
                    new Page.ScreenshotOptions().setPath(PICTURES.resolve(name)).setOmitBackground(true));
        }
    }
}
