package patinary.photos;

import java.nio.file.Path;
import java.time.Duration;
import java.util.UUID;
import org.springframework.core.io.FileSystemResource;
import org.springframework.core.io.Resource;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import patinary.web.Ids;
import patinary.web.NotFound;

/** Sends the pictures themselves, to people who are signed in. */
@Controller
class PhotoFileController {

    private final Photos photos;
    private final PhotoFiles files;

    PhotoFileController(Photos photos, PhotoFiles files) {
        this.photos = photos;
        this.files = files;
    }

    /** What an address shows never changes, so the browser that asked may keep it. */
    @GetMapping("/photos" + Ids.PATH + "/{size:small|middle|full}")
    ResponseEntity<Resource> show(@PathVariable UUID id, @PathVariable String size) {
        Photo photo = photos.find(id);
        Path file = files.find(photo.sha256(), Size.of(size).orElseThrow())
                .orElseThrow(() -> new NotFound("file of photo " + id));
        return ResponseEntity.ok()
                .contentType(MediaType.IMAGE_JPEG)
                .cacheControl(
                        CacheControl.maxAge(Duration.ofDays(365)).cachePrivate().immutable())
                .eTag(photo.sha256() + "-" + size)
                .body(new FileSystemResource(file));
    }
}
