package patinary.taxyear;

import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import patinary.web.NotFound;

/** Hands out the year's files, one by one or all in a folder. */
@Controller
class YearFileController {

    private static final MediaType ZIP = MediaType.parseMediaType("application/zip");

    private final YearFiles files;

    YearFileController(YearFiles files) {
        this.files = files;
    }

    @GetMapping("/year/{year:[0-9]{4}}/{name}.csv")
    ResponseEntity<byte[]> file(@PathVariable int year, @PathVariable String name) {
        YearController.require(year);
        if (!YearFiles.NAMES.contains(name)) {
            throw new NotFound("file " + name);
        }
        return files.file(year, name).download(year + "-" + name + ".csv");
    }

    @GetMapping("/year/{year:[0-9]{4}}.zip")
    ResponseEntity<byte[]> folder(@PathVariable int year) {
        YearController.require(year);
        return ResponseEntity.ok()
                .contentType(ZIP)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment()
                                .filename(year + ".zip")
                                .build()
                                .toString())
                .body(files.folder(year));
    }
}
