package patinary.handbook;

import java.time.Duration;
import java.util.List;
import org.springframework.http.CacheControl;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import patinary.web.NotFound;
import patinary.web.Page;
import patinary.web.Window;

/** The guide and the handbook, page by page, and a search in both. */
@Controller
class HandbookController {

    private static final String SHELF = "/{shelf:guide|handbook}";

    private final Library library;

    HandbookController(Library library) {
        this.library = library;
    }

    /** The list of the pages, or what was found in both. */
    @GetMapping(SHELF)
    String list(
            @PathVariable String shelf,
            @RequestParam(defaultValue = "") String q,
            @RequestParam(required = false) Integer page,
            Model model) {
        model.addAttribute("shelf", shelf);
        model.addAttribute("query", q.strip());
        model.addAttribute("searched", !q.isBlank());
        List<Search.Hit> hits = Search.hits(q, library.leaves());
        model.addAttribute("hits", Page.within(hits, Window.of(page)));
        return leaf(shelf, Library.LIST, model);
    }

    @GetMapping(SHELF + "/{name:[a-z0-9-]+}")
    String page(@PathVariable String shelf, @PathVariable String name, Model model) {
        model.addAttribute("shelf", shelf);
        return leaf(shelf, name, model);
    }

    @GetMapping(SHELF + "/{name:[a-z0-9-]+}.csv")
    ResponseEntity<byte[]> example(@PathVariable String shelf, @PathVariable String name) {
        byte[] file =
                library.example(shelf(shelf), name).orElseThrow(() -> new NotFound("example " + shelf + "/" + name));
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType("text/csv;charset=UTF-8"))
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment()
                                .filename(name + ".csv")
                                .build()
                                .toString())
                .body(file);
    }

    /** The address is the same in the next version, where the picture may be another: it is asked for again after a day. */
    @GetMapping(SHELF + "/{name:[a-z0-9-]+}.jpeg")
    ResponseEntity<byte[]> picture(@PathVariable String shelf, @PathVariable String name) {
        byte[] file =
                library.picture(shelf(shelf), name).orElseThrow(() -> new NotFound("picture " + shelf + "/" + name));
        return ResponseEntity.ok()
                .contentType(MediaType.IMAGE_JPEG)
                .cacheControl(CacheControl.maxAge(Duration.ofDays(1)).cachePrivate())
                .body(file);
    }

    private String leaf(String shelf, String name, Model model) {
        model.addAttribute(
                "leaf", library.leaf(shelf(shelf), name).orElseThrow(() -> new NotFound("page " + shelf + "/" + name)));
        return "handbook/page";
    }

    private static Shelf shelf(String word) {
        return word.equals(Shelf.GUIDE.word()) ? Shelf.GUIDE : Shelf.HANDBOOK;
    }
}
