package patinary.spending;

import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.RequestMapping;

/** Pages of sales tax paid over; they show how much is due by the books. */
@Controller
@RequestMapping("/sales-tax-paid")
class SalesTaxPaidController extends MoneyController<SalesTaxPaid, SalesTaxPaidForm> {

    SalesTaxPaidController(SalesTaxPaidKind kind) {
        super(kind);
    }
}
