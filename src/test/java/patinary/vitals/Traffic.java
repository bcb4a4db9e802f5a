package patinary.vitals;

import com.google.gson.JsonObject;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Page;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Counts what a page takes from the line, as the browser's own network log has it: compressed, headers included. */
public final class Traffic {

    /** One thing that a page asked for; {@code bytes} is 0 where it came out of a cache. */
    public record Asked(String url, String type, long bytes) {

        boolean isPhoto() {
            return url.contains("/photos/");
        }
    }

    private final Map<String, Asked> asked = new LinkedHashMap<>();

    public Traffic(Page page) {
        CDPSession devtools = page.context().newCDPSession(page);
        devtools.on("Network.requestWillBeSent", this::sent);
        devtools.on("Network.loadingFinished", this::finished);
        devtools.send("Network.enable");
    }

    public Map<String, Asked> asked() {
        return asked;
    }

    /** The page and its files: all but the photos. */
    public long bytes() {
        return taken(false).mapToLong(Asked::bytes).sum();
    }

    /** Requests that took something from the line, but for photos. */
    public int requests() {
        return (int) taken(false).count();
    }

    /** The photos that took something from the line. */
    public List<Asked> photos() {
        return taken(true).toList();
    }

    private Stream<Asked> taken(boolean photos) {
        return asked.values().stream().filter(one -> one.bytes() > 0 && one.isPhoto() == photos);
    }

    private void sent(JsonObject event) {
        String url = event.getAsJsonObject("request").get("url").getAsString();
        String type = event.has("type") ? event.get("type").getAsString() : "Other";
        asked.put(event.get("requestId").getAsString(), new Asked(url, type, 0));
    }

    private void finished(JsonObject event) {
        long bytes = event.get("encodedDataLength").getAsLong();
        asked.computeIfPresent(
                event.get("requestId").getAsString(), (id, one) -> new Asked(one.url(), one.type(), bytes));
    }
}
