package patinary.web;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.servlet.resource.ResourceUrlProvider;

/**
 * What a phone wants to know before it puts the shop on its home screen (W3C Web Application Manifest). Says nothing of the
 * shop: it is read before anybody has signed in.
 */
@Controller
class ManifestController {

    private static final MediaType MANIFEST = MediaType.parseMediaType("application/manifest+json");
    private static final String LINEN = "#f3ece0";

    private final ResourceUrlProvider files;

    ManifestController(ResourceUrlProvider files) {
        this.files = files;
    }

    @GetMapping("/manifest.webmanifest")
    ResponseEntity<Map<String, Object>> manifest(Locale locale) {
        Map<String, Object> manifest = new LinkedHashMap<>();
        manifest.put("id", "/");
        manifest.put("name", "Patinary");
        manifest.put("short_name", "Patinary");
        manifest.put("lang", locale.toLanguageTag());
        manifest.put("start_url", "/buy");
        manifest.put("scope", "/");
        manifest.put("display", "standalone");
        manifest.put("background_color", LINEN);
        manifest.put("theme_color", LINEN);
        manifest.put(
                "icons",
                List.of(
                        icon("/img/icon-192.png", "192x192", "any"),
                        icon("/img/icon-512.png", "512x512", "any"),
                        icon("/img/icon-maskable-512.png", "512x512", "maskable")));
        return ResponseEntity.ok()
                .contentType(MANIFEST)
                .cacheControl(CacheControl.maxAge(Duration.ofHours(1)).cachePublic())
                .body(manifest);
    }

    private Map<String, String> icon(String path, String sizes, String purpose) {
        String versioned = files.getForLookupPath(path);
        return Map.of(
                "src", versioned == null ? path : versioned, "sizes", sizes, "type", "image/png", "purpose", purpose);
    }
}
