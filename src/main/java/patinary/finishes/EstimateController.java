package patinary.finishes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import patinary.measure.Dimension;
import patinary.web.Choice;
import patinary.web.Ids;

/** What a finish will take on a piece, before it is begun. */
@Controller
@RequestMapping("/finishes/estimate")
class EstimateController {

    private final FinishBook book;
    private final FinishPage page;
    private final FollowedPieces pieces;

    EstimateController(FinishBook book, FinishPage page, FollowedPieces pieces) {
        this.book = book;
        this.page = page;
        this.pieces = pieces;
    }

    /** Without a finish, the one that is planned for the piece. */
    @GetMapping
    String estimate(
            @RequestParam(defaultValue = "") String piece,
            @RequestParam(defaultValue = "") String finish,
            Model model) {
        Optional<FollowedPieces.Candidate> chosen =
                Ids.read(piece).flatMap(id -> pieces.candidate(id).stream().findFirst());
        Optional<FinishBook.Kept> kept = Ids.read(finish)
                .or(() -> chosen.map(FollowedPieces.Candidate::finishId))
                .flatMap(book::find);
        model.addAttribute("pieces", choices(chosen));
        model.addAttribute("finishes", finishes());
        model.addAttribute("piece", chosen.map(one -> one.id().toString()).orElse(""));
        model.addAttribute("finishId", kept.map(one -> one.id().toString()).orElse(""));
        model.addAttribute("chosen", chosen.orElse(null));
        model.addAttribute("kept", kept.orElse(null));
        if (chosen.isPresent() && kept.isPresent()) {
            show(model, chosen.get(), kept.get());
        }
        return "finishes/estimate";
    }

    private void show(Model model, FollowedPieces.Candidate piece, FinishBook.Kept kept) {
        Estimate estimate = Estimate.of(
                kept.finish(), piece.area(), pieces.stock(kept.finish().supplies()));
        page.finish(model, kept);
        model.addAttribute("areaUnit", Dimension.AREA);
        model.addAttribute("estimate", estimate);
        model.addAttribute("lines", page.lines(estimate));
    }

    private List<Choice> choices(Optional<FollowedPieces.Candidate> chosen) {
        List<FollowedPieces.Candidate> all = new ArrayList<>(pieces.candidates());
        chosen.filter(one -> all.stream().noneMatch(other -> other.id().equals(one.id())))
                .ifPresent(one -> all.add(0, one));
        return all.stream()
                .map(one -> Choice.named(one.id().toString(), one.name()))
                .toList();
    }

    private List<Choice> finishes() {
        return book.all().stream()
                .map(one -> Choice.named(one.id().toString(), one.finish().name()))
                .toList();
    }
}
