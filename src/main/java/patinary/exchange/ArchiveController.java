package patinary.exchange;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.shop.CurrentShop;
import patinary.web.Downloads;
import patinary.web.Notice;
import patinary.web.SavedFile;

/** Gives the whole shop as an archive, and takes one into an empty shop; for the owner only. */
@Controller
@RequestMapping("/shop/archive")
class ArchiveController {

    private final ShopArchive archive;
    private final Downloads downloads;
    private final CurrentShop shop;

    ArchiveController(ShopArchive archive, Downloads downloads, CurrentShop shop) {
        this.archive = archive;
        this.downloads = downloads;
        this.shop = shop;
    }

    @GetMapping
    String show() {
        return "exchange/archive";
    }

    @GetMapping("/download")
    void download(HttpServletResponse response) throws IOException {
        downloads.alone(() -> {
            String name = "shop-archive-" + shop.today() + ".zip";
            SavedFile.head(response, SavedFile.ZIP, name);
            OutputStream stream = response.getOutputStream();
            archive.exportZip(stream, Progress.SILENT);
        });
    }

    @PostMapping
    String load(
            @RequestParam("archive") MultipartFile file,
            Model model,
            HttpServletResponse response,
            RedirectAttributes redirect)
            throws IOException {
        Path kept = Files.createTempFile("archive", ".zip");
        try {
            file.transferTo(kept);
            archive.load(kept, Progress.SILENT);
        } catch (ArchiveRefused refused) {
            response.setStatus(422);
            model.addAttribute("refused", refused);
            return "exchange/archive";
        } finally {
            Files.deleteIfExists(kept);
        }
        Notice.next(redirect, "exchange.archive.loaded", shop.name());
        return "redirect:/shop/archive";
    }
}
