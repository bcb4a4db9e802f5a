package patinary.spending;

import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.RequestMapping;

/** Pages of one expense. */
@Controller
@RequestMapping("/expenses")
class ExpenseController extends MoneyController<Expense, ExpenseForm> {

    ExpenseController(ExpenseKind kind) {
        super(kind);
    }
}
