package patinary.spending;

import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.RequestMapping;

/** Pages of income that is no sale. */
@Controller
@RequestMapping("/other-income")
class OtherIncomeController extends MoneyController<OtherIncome, OtherIncomeForm> {

    OtherIncomeController(OtherIncomeKind kind) {
        super(kind);
    }
}
