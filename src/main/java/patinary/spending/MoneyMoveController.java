package patinary.spending;

import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.RequestMapping;

/** Pages of money carried from one place to another. */
@Controller
@RequestMapping("/money-moves")
class MoneyMoveController extends MoneyController<MoneyMove, MoneyMoveForm> {

    MoneyMoveController(MoneyMoveKind kind) {
        super(kind);
    }
}
