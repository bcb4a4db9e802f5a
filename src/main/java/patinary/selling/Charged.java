package patinary.selling;

import patinary.money.Amount;

/**
 * What a buyer is charged, as a fee rule sees it.
 *
 * @param price after discounts, without tax
 * @param shipping charged to the buyer, without tax
 * @param tax sales tax on both, whoever pays it over
 */
public record Charged(Amount price, Amount shipping, Amount tax) {

    Amount all() {
        return price.plus(shipping).plus(tax);
    }

    Amount base(FeeBase base) {
        return switch (base) {
            case PRICE -> price;
            case PRICE_AND_SHIPPING -> price.plus(shipping);
            case ALL_WITH_TAX -> all();
        };
    }
}
