package patinary.spending;

import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.RequestMapping;

/** Pages of one trip. */
@Controller
@RequestMapping("/trips")
class TripController extends MoneyController<Trip, TripForm> {

    TripController(TripKind kind) {
        super(kind);
    }
}
