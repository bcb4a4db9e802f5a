package patinary.spending;

import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.RequestMapping;

/** Pages of money the owner put in or took out. */
@Controller
@RequestMapping("/owner-money")
class OwnerMoneyController extends MoneyController<OwnerMoney, OwnerMoneyForm> {

    OwnerMoneyController(OwnerMoneyKind kind) {
        super(kind);
    }
}
