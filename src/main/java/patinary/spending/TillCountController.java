package patinary.spending;

import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.RequestMapping;

/** Pages of counts of the cash box. */
@Controller
@RequestMapping("/till-counts")
class TillCountController extends MoneyController<TillCount, TillCountForm> {

    TillCountController(TillCountKind kind) {
        super(kind);
    }
}
