package patinary.yearfolder;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import patinary.web.Downloads;
import patinary.web.NotFound;
import patinary.web.SavedFile;

/** Hands out the year's records: the folder, the workbook, or one table. */
@Controller
class YearFolderController {

    private static final String WORKBOOK = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

    private static final int FIRST_YEAR = 1900;

    private final YearFolder folder;
    private final Downloads downloads;

    YearFolderController(YearFolder folder, Downloads downloads) {
        this.folder = folder;
        this.downloads = downloads;
    }

    @GetMapping("/year/{year:[0-9]{4}}.zip")
    void folder(@PathVariable int year, HttpServletResponse response) throws IOException {
        downloads.alone(() -> {
            answer(year, response, SavedFile.ZIP, year + ".zip");
            folder.folder(year, response.getOutputStream());
        });
    }

    @GetMapping("/year/{year:[0-9]{4}}.xlsx")
    void workbook(@PathVariable int year, HttpServletResponse response) throws IOException {
        downloads.alone(() -> {
            answer(year, response, WORKBOOK, year + ".xlsx");
            folder.workbook(year, response.getOutputStream());
        });
    }

    @GetMapping("/year/{year:[0-9]{4}}/{name:[a-z-]+}.csv")
    void table(@PathVariable int year, @PathVariable String name, HttpServletResponse response) throws IOException {
        if (!YearTables.NAMES.contains(name)) {
            throw new NotFound("file " + name);
        }
        answer(year, response, "text/csv;charset=UTF-8", year + "-" + name + ".csv");
        folder.table(year, name, response.getOutputStream());
    }

    private static void answer(int year, HttpServletResponse response, String type, String name) {
        if (year < FIRST_YEAR) {
            throw new NotFound("year " + year);
        }
        SavedFile.head(response, type, name);
    }
}
