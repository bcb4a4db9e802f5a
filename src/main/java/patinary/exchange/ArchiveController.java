package patinary.exchange;

import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.io.OutputStream;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.multipart.support.MissingServletRequestPartException;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import patinary.shop.CurrentShop;
import patinary.web.Downloads;
import patinary.web.Notice;
import patinary.web.RestOfForm;
import patinary.web.SavedFile;

/** Gives the whole shop as an archive, and takes one into an empty shop; for the owner only. */
@Controller
@RequestMapping(ArchiveDoor.PATH)
class ArchiveController {

    private static final String FIELD = "archive";

    private final ShopArchive archive;
    private final ArrivingArchive arriving;
    private final Downloads downloads;
    private final CurrentShop shop;

    ArchiveController(ShopArchive archive, ArrivingArchive arriving, Downloads downloads, CurrentShop shop) {
        this.archive = archive;
        this.arriving = arriving;
        this.downloads = downloads;
        this.shop = shop;
    }

    @GetMapping
    String show(Model model) {
        model.addAttribute("most", ArrivingArchive.words(arriving.most()));
        model.addAttribute("mostBytes", arriving.most().toBytes());
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
    String load(HttpServletRequest request, Model model, HttpServletResponse response, RedirectAttributes redirect)
            throws IOException, ServletException {
        FormStream form = ArchiveDoor.form(request);
        if (form == null) {
            throw new MissingServletRequestPartException(FIELD);
        }
        try {
            // Before anything of it comes: what cannot come in need not be sent.
            archive.refuseUnlessEmpty();
            arriving.take(
                    form.file(FIELD), request.getContentLengthLong(), kept -> archive.load(kept, Progress.SILENT));
        } catch (ArchiveRefused refused) {
            RestOfForm.pass(request);
            response.setStatus(422);
            model.addAttribute("refused", refused);
            return show(model);
        }
        Notice.next(redirect, "exchange.archive.loaded", shop.name());
        return "redirect:/shop/archive";
    }
}
