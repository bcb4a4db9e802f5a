package patinary.setaside;

import java.time.LocalDate;
import java.util.UUID;

/** What she noted as paid towards the tax of a year; the amount in minor units. */
record TaxPayment(UUID id, int taxYear, LocalDate paidOn, long amountMinor, String note) {}
