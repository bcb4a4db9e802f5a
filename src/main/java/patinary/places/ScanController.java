package patinary.places;

import jakarta.servlet.http.HttpServletResponse;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/**
 * The page behind the square on a label. Its address is short so that the square stays small; signed out, it leads
 * through the sign-in and back here.
 */
@Controller
class ScanController {

    private final PieceCodes codes;
    private final Places places;

    ScanController(PieceCodes codes, Places places) {
        this.codes = codes;
        this.places = places;
    }

    @GetMapping("/p/{code}")
    String scanned(@PathVariable String code, Model model, HttpServletResponse response) {
        return page(code, model, response);
    }

    /** For codes with signs that no path may have, and for typing one. */
    @GetMapping("/p")
    String typed(@RequestParam(defaultValue = "") String code, Model model, HttpServletResponse response) {
        return page(code, model, response);
    }

    private String page(String code, Model model, HttpServletResponse response) {
        Optional<PlacedPiece> piece = codes.find(code);
        model.addAttribute("code", code);
        if (piece.isEmpty()) {
            response.setStatus(code.isBlank() ? HttpServletResponse.SC_OK : HttpServletResponse.SC_NOT_FOUND);
            return "places/unknown";
        }
        PlaceForm form = new PlaceForm();
        form.place = piece.get().place();
        model.addAttribute("form", form);
        model.addAttribute("piece", piece.get());
        model.addAttribute("places", places.all());
        return "places/scanned";
    }
}
