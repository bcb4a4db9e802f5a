-- What there is: the things that documents speak of.
-- Amounts are whole minor units of the shop's currency; quantities are exact decimals in base units
-- (millilitre, gram, centimetre, square centimetre, one thing).

create table source (
    id uuid not null,
    name varchar(120) not null,
    note varchar(1000) not null,
    resale_certificate varchar(60) not null,
    version bigint not null,
    constraint source_pk primary key (id),
    constraint source_name_uk unique (name)
);

create table money_place (
    id uuid not null,
    name varchar(120) not null,
    kind varchar(10) not null,
    version bigint not null,
    constraint money_place_pk primary key (id),
    constraint money_place_name_uk unique (name),
    constraint money_place_kind_ck check (kind in ('CASH', 'BANK', 'CARD', 'CHANNEL'))
);

create table channel (
    id uuid not null,
    name varchar(120) not null,
    money_place_id uuid not null,
    passes_tax boolean not null,
    version bigint not null,
    constraint channel_pk primary key (id),
    constraint channel_name_uk unique (name),
    constraint channel_money_place_fk foreign key (money_place_id) references money_place (id)
);

-- The fee rule of a channel from a day on: percent of price and shipping, plus a fixed amount per sale.
create table channel_fee (
    channel_id uuid not null,
    valid_from date not null,
    percent numeric(9, 4) not null,
    fixed_minor bigint not null,
    constraint channel_fee_pk primary key (channel_id, valid_from),
    constraint channel_fee_channel_fk foreign key (channel_id) references channel (id),
    constraint channel_fee_percent_ck check (percent >= 0),
    constraint channel_fee_fixed_ck check (fixed_minor >= 0)
);

create table style (
    id uuid not null,
    name varchar(120) not null,
    version bigint not null,
    constraint style_pk primary key (id),
    constraint style_name_uk unique (name)
);

create table object_kind (
    id uuid not null,
    name varchar(120) not null,
    version bigint not null,
    constraint object_kind_pk primary key (id),
    constraint object_kind_name_uk unique (name)
);

create table supply_line (
    id uuid not null,
    name varchar(120) not null,
    maker varchar(120) not null,
    version bigint not null,
    constraint supply_line_pk primary key (id),
    constraint supply_line_name_uk unique (name)
);

create table supply (
    id uuid not null,
    supply_line_id uuid not null,
    name varchar(120) not null,
    dimension varchar(10) not null,
    retail_price_minor bigint,
    low_quantity numeric(30, 14),
    version bigint not null,
    constraint supply_pk primary key (id),
    constraint supply_name_uk unique (supply_line_id, name),
    constraint supply_line_fk foreign key (supply_line_id) references supply_line (id),
    constraint supply_dimension_ck check (dimension in ('VOLUME', 'MASS', 'LENGTH', 'AREA', 'COUNT')),
    constraint supply_retail_price_ck check (retail_price_minor >= 0),
    constraint supply_low_quantity_ck check (low_quantity >= 0)
);

-- How a supply is bought: a jar of 8 fluid ounces, a pack of 3 sheets.
create table supply_pack (
    supply_id uuid not null,
    name varchar(60) not null,
    quantity numeric(30, 14) not null,
    constraint supply_pack_pk primary key (supply_id, name),
    constraint supply_pack_supply_fk foreign key (supply_id) references supply (id),
    constraint supply_pack_quantity_ck check (quantity > 0)
);

-- Her own measures: a dab, a brush load.
create table supply_measure (
    supply_id uuid not null,
    name varchar(60) not null,
    quantity numeric(30, 14) not null,
    constraint supply_measure_pk primary key (supply_id, name),
    constraint supply_measure_supply_fk foreign key (supply_id) references supply (id),
    constraint supply_measure_quantity_ck check (quantity > 0)
);

create table piece (
    id uuid not null,
    code varchar(20) not null,
    title varchar(200) not null,
    kind_id uuid,
    style_id uuid,
    material varchar(60) not null,
    area_cm2 numeric(30, 14),
    place varchar(60) not null,
    note varchar(2000) not null,
    version bigint not null,
    constraint piece_pk primary key (id),
    constraint piece_code_uk unique (code),
    constraint piece_kind_fk foreign key (kind_id) references object_kind (id),
    constraint piece_style_fk foreign key (style_id) references style (id),
    constraint piece_area_ck check (area_cm2 > 0)
);

create table piece_tag (
    piece_id uuid not null,
    tag varchar(60) not null,
    constraint piece_tag_pk primary key (piece_id, tag),
    constraint piece_tag_piece_fk foreign key (piece_id) references piece (id)
);

-- What happens: documents are facts and are kept; the canonical order is stored with them.

create table document (
    id uuid not null,
    kind varchar(20) not null,
    kind_rank integer not null,
    doc_date date not null,
    note varchar(2000) not null,
    recorded_at timestamp with time zone not null,
    version bigint not null,
    constraint document_pk primary key (id)
);

create index document_order_ix on document (doc_date, kind_rank, id);

create table opening (
    id uuid not null,
    odometer numeric(12, 1),
    constraint opening_pk primary key (id),
    constraint opening_document_fk foreign key (id) references document (id)
);

create table opening_piece (
    opening_id uuid not null,
    piece_id uuid not null,
    cost_minor bigint not null,
    known boolean not null,
    constraint opening_piece_pk primary key (opening_id, piece_id),
    constraint opening_piece_opening_fk foreign key (opening_id) references opening (id),
    constraint opening_piece_piece_fk foreign key (piece_id) references piece (id),
    constraint opening_piece_cost_ck check (cost_minor >= 0)
);

create table opening_supply (
    opening_id uuid not null,
    line integer not null,
    supply_id uuid not null,
    place varchar(10) not null,
    quantity numeric(30, 14) not null,
    cost_minor bigint not null,
    about boolean not null,
    constraint opening_supply_pk primary key (opening_id, line),
    constraint opening_supply_opening_fk foreign key (opening_id) references opening (id),
    constraint opening_supply_supply_fk foreign key (supply_id) references supply (id),
    constraint opening_supply_place_ck check (place in ('BENCH', 'SHELF')),
    constraint opening_supply_quantity_ck check (quantity > 0),
    constraint opening_supply_cost_ck check (cost_minor >= 0)
);

-- Money there and amounts owed on the first day, by account; amounts are what she has or is owed, or what she owes.
create table opening_balance (
    opening_id uuid not null,
    line integer not null,
    account varchar(20) not null,
    place_id uuid,
    party_id uuid,
    title varchar(200) not null,
    amount_minor bigint not null,
    constraint opening_balance_pk primary key (opening_id, line),
    constraint opening_balance_opening_fk foreign key (opening_id) references opening (id),
    constraint opening_balance_place_fk foreign key (place_id) references money_place (id),
    constraint opening_balance_party_fk foreign key (party_id) references source (id),
    constraint opening_balance_account_ck check (account in ('MONEY', 'RECEIVABLE', 'PAYABLE', 'CUSTOMER_DEPOSITS',
        'STORE_CREDIT_GIVEN', 'STORE_CREDIT_HELD', 'SALES_TAX_DUE'))
);

create table trip (
    id uuid not null,
    purpose varchar(200) not null,
    start_place varchar(120) not null,
    destination varchar(120) not null,
    miles numeric(9, 1) not null,
    rate_tenths integer not null,
    constraint trip_pk primary key (id),
    constraint trip_document_fk foreign key (id) references document (id),
    constraint trip_miles_ck check (miles > 0),
    constraint trip_rate_ck check (rate_tenths >= 0)
);

create table receipt (
    id uuid not null,
    source_id uuid,
    trip_id uuid,
    till_total_minor bigint not null,
    constraint receipt_pk primary key (id),
    constraint receipt_document_fk foreign key (id) references document (id),
    constraint receipt_source_fk foreign key (source_id) references source (id),
    constraint receipt_trip_fk foreign key (trip_id) references trip (id)
);

create table receipt_line (
    receipt_id uuid not null,
    line integer not null,
    kind varchar(10) not null,
    title varchar(200) not null,
    quantity numeric(30, 14) not null,
    price_minor bigint not null,
    discount_percent numeric(9, 4),
    discount_minor bigint,
    about boolean not null,
    supply_id uuid,
    content numeric(30, 14),
    category varchar(40),
    constraint receipt_line_pk primary key (receipt_id, line),
    constraint receipt_line_receipt_fk foreign key (receipt_id) references receipt (id),
    constraint receipt_line_supply_fk foreign key (supply_id) references supply (id),
    constraint receipt_line_kind_ck check (kind in ('PIECES', 'SUPPLY', 'SHELF', 'EXPENSE', 'HOME', 'CHARITY')),
    constraint receipt_line_quantity_ck check (quantity > 0),
    constraint receipt_line_discount_ck check (discount_percent is null or discount_minor is null),
    constraint receipt_line_supply_ck check ((kind in ('SUPPLY', 'SHELF')) = (supply_id is not null)),
    constraint receipt_line_content_ck check ((supply_id is null) = (content is null) and (content is null or content > 0)),
    constraint receipt_line_category_ck check ((kind = 'EXPENSE') = (category is not null))
);

create table receipt_piece (
    receipt_id uuid not null,
    line integer not null,
    piece_id uuid not null,
    weight numeric(30, 14) not null,
    constraint receipt_piece_pk primary key (receipt_id, piece_id),
    constraint receipt_piece_line_fk foreign key (receipt_id) references receipt (id),
    constraint receipt_piece_piece_fk foreign key (piece_id) references piece (id),
    constraint receipt_piece_weight_ck check (weight >= 0)
);

-- What is added to or taken off the lines: a discount, tax, shipping, premium, fee, or the till's cash rounding.
create table receipt_charge (
    receipt_id uuid not null,
    line integer not null,
    kind varchar(10) not null,
    title varchar(120) not null,
    percent numeric(9, 4),
    amount_minor bigint,
    taxed boolean not null,
    after_tax boolean not null,
    constraint receipt_charge_pk primary key (receipt_id, line),
    constraint receipt_charge_receipt_fk foreign key (receipt_id) references receipt (id),
    constraint receipt_charge_kind_ck check (kind in ('DISCOUNT', 'TAX', 'SHIPPING', 'PREMIUM', 'FEE', 'ROUNDING')),
    constraint receipt_charge_value_ck check ((percent is null) <> (amount_minor is null))
);

-- The receipt lines that a charge applies to; none listed means every line but charity.
create table receipt_charge_line (
    receipt_id uuid not null,
    charge integer not null,
    line integer not null,
    constraint receipt_charge_line_pk primary key (receipt_id, charge, line),
    constraint receipt_charge_line_receipt_fk foreign key (receipt_id) references receipt (id)
);

create table receipt_payment (
    receipt_id uuid not null,
    line integer not null,
    way varchar(20) not null,
    place_id uuid,
    amount_minor bigint not null,
    constraint receipt_payment_pk primary key (receipt_id, line),
    constraint receipt_payment_receipt_fk foreign key (receipt_id) references receipt (id),
    constraint receipt_payment_place_fk foreign key (place_id) references money_place (id),
    constraint receipt_payment_way_ck check (way in ('PLACE', 'OWED', 'STORE_CREDIT', 'OWNER')),
    constraint receipt_payment_place_ck check ((way = 'PLACE') = (place_id is not null))
);

-- What it pays is owed for a receipt, or since the first day: then receipt_id names the opening.
create table bill_paid (
    id uuid not null,
    receipt_id uuid,
    place_id uuid not null,
    amount_minor bigint not null,
    constraint bill_paid_pk primary key (id),
    constraint bill_paid_document_fk foreign key (id) references document (id),
    constraint bill_paid_receipt_fk foreign key (receipt_id) references document (id),
    constraint bill_paid_place_fk foreign key (place_id) references money_place (id),
    constraint bill_paid_amount_ck check (amount_minor > 0)
);

-- The receipt is the one on which less is owed; or it names the opening.
create table supplier_return (
    id uuid not null,
    source_id uuid,
    way varchar(20) not null,
    place_id uuid,
    receipt_id uuid,
    amount_minor bigint not null,
    constraint supplier_return_pk primary key (id),
    constraint supplier_return_document_fk foreign key (id) references document (id),
    constraint supplier_return_source_fk foreign key (source_id) references source (id),
    constraint supplier_return_place_fk foreign key (place_id) references money_place (id),
    constraint supplier_return_way_ck check (way in ('PLACE', 'OWED', 'STORE_CREDIT')),
    constraint supplier_return_receipt_fk foreign key (receipt_id) references document (id),
    constraint supplier_return_place_ck check ((way = 'PLACE') = (place_id is not null)),
    constraint supplier_return_receipt_ck check ((way = 'OWED') = (receipt_id is not null)),
    constraint supplier_return_amount_ck check (amount_minor >= 0)
);

create table supplier_return_piece (
    supplier_return_id uuid not null,
    piece_id uuid not null,
    constraint supplier_return_piece_pk primary key (supplier_return_id, piece_id),
    constraint supplier_return_piece_return_fk foreign key (supplier_return_id) references supplier_return (id),
    constraint supplier_return_piece_piece_fk foreign key (piece_id) references piece (id)
);

create table supplier_return_supply (
    supplier_return_id uuid not null,
    line integer not null,
    supply_id uuid not null,
    place varchar(10) not null,
    quantity numeric(30, 14) not null,
    constraint supplier_return_supply_pk primary key (supplier_return_id, line),
    constraint supplier_return_supply_return_fk foreign key (supplier_return_id) references supplier_return (id),
    constraint supplier_return_supply_supply_fk foreign key (supply_id) references supply (id),
    constraint supplier_return_supply_place_ck check (place in ('BENCH', 'SHELF')),
    constraint supplier_return_supply_quantity_ck check (quantity > 0)
);

create table taking (
    id uuid not null,
    supply_id uuid not null,
    quantity numeric(30, 14) not null,
    own_use_tax boolean not null,
    constraint taking_pk primary key (id),
    constraint taking_document_fk foreign key (id) references document (id),
    constraint taking_supply_fk foreign key (supply_id) references supply (id),
    constraint taking_quantity_ck check (quantity > 0)
);

create table bench_entry (
    id uuid not null,
    minutes integer not null,
    done varchar(4000) not null,
    constraint bench_entry_pk primary key (id),
    constraint bench_entry_document_fk foreign key (id) references document (id),
    constraint bench_entry_minutes_ck check (minutes >= 0)
);

create table bench_piece (
    bench_entry_id uuid not null,
    piece_id uuid not null,
    ready boolean not null,
    constraint bench_piece_pk primary key (bench_entry_id, piece_id),
    constraint bench_piece_entry_fk foreign key (bench_entry_id) references bench_entry (id),
    constraint bench_piece_piece_fk foreign key (piece_id) references piece (id)
);

create table bench_use (
    bench_entry_id uuid not null,
    line integer not null,
    supply_id uuid not null,
    typed varchar(80) not null,
    quantity numeric(30, 14) not null,
    estimated boolean not null,
    constraint bench_use_pk primary key (bench_entry_id, line),
    constraint bench_use_entry_fk foreign key (bench_entry_id) references bench_entry (id),
    constraint bench_use_supply_fk foreign key (supply_id) references supply (id),
    constraint bench_use_quantity_ck check (quantity > 0)
);

create table bench_use_piece (
    bench_entry_id uuid not null,
    line integer not null,
    piece_id uuid not null,
    weight numeric(30, 14) not null,
    constraint bench_use_piece_pk primary key (bench_entry_id, line, piece_id),
    constraint bench_use_piece_entry_fk foreign key (bench_entry_id) references bench_entry (id),
    constraint bench_use_piece_piece_fk foreign key (piece_id) references piece (id),
    constraint bench_use_piece_weight_ck check (weight >= 0)
);

create table bench_mishap (
    bench_entry_id uuid not null,
    line integer not null,
    piece_id uuid,
    supply_id uuid,
    surface varchar(60) not null,
    what varchar(500) not null,
    constraint bench_mishap_pk primary key (bench_entry_id, line),
    constraint bench_mishap_entry_fk foreign key (bench_entry_id) references bench_entry (id),
    constraint bench_mishap_piece_fk foreign key (piece_id) references piece (id),
    constraint bench_mishap_supply_fk foreign key (supply_id) references supply (id)
);

create table supply_count (
    id uuid not null,
    supply_id uuid not null,
    place varchar(10) not null,
    quantity numeric(30, 14) not null,
    constraint supply_count_pk primary key (id),
    constraint supply_count_document_fk foreign key (id) references document (id),
    constraint supply_count_supply_fk foreign key (supply_id) references supply (id),
    constraint supply_count_place_ck check (place in ('BENCH', 'SHELF')),
    constraint supply_count_quantity_ck check (quantity >= 0)
);

create table regrouping (
    id uuid not null,
    constraint regrouping_pk primary key (id),
    constraint regrouping_document_fk foreign key (id) references document (id)
);

create table regrouping_from (
    regrouping_id uuid not null,
    piece_id uuid not null,
    constraint regrouping_from_pk primary key (regrouping_id, piece_id),
    constraint regrouping_from_regrouping_fk foreign key (regrouping_id) references regrouping (id),
    constraint regrouping_from_piece_fk foreign key (piece_id) references piece (id)
);

create table regrouping_to (
    regrouping_id uuid not null,
    piece_id uuid not null,
    weight numeric(30, 14) not null,
    constraint regrouping_to_pk primary key (regrouping_id, piece_id),
    constraint regrouping_to_regrouping_fk foreign key (regrouping_id) references regrouping (id),
    constraint regrouping_to_piece_fk foreign key (piece_id) references piece (id),
    constraint regrouping_to_weight_ck check (weight >= 0)
);

-- A piece, or a set of pieces, put up for sale on a day; no amounts reach the books.
create table offer (
    id uuid not null,
    title varchar(200) not null,
    ended_on date,
    constraint offer_pk primary key (id),
    constraint offer_document_fk foreign key (id) references document (id)
);

create table offer_piece (
    offer_id uuid not null,
    piece_id uuid not null,
    weight numeric(30, 14) not null,
    constraint offer_piece_pk primary key (offer_id, piece_id),
    constraint offer_piece_offer_fk foreign key (offer_id) references offer (id),
    constraint offer_piece_piece_fk foreign key (piece_id) references piece (id),
    constraint offer_piece_weight_ck check (weight >= 0)
);

create table offer_channel (
    offer_id uuid not null,
    channel_id uuid not null,
    constraint offer_channel_pk primary key (offer_id, channel_id),
    constraint offer_channel_offer_fk foreign key (offer_id) references offer (id),
    constraint offer_channel_channel_fk foreign key (channel_id) references channel (id)
);

create table offer_price (
    offer_id uuid not null,
    valid_from date not null,
    price_minor bigint not null,
    constraint offer_price_pk primary key (offer_id, valid_from),
    constraint offer_price_offer_fk foreign key (offer_id) references offer (id),
    constraint offer_price_price_ck check (price_minor >= 0)
);

create table offer_pause (
    offer_id uuid not null,
    paused_from date not null,
    paused_to date,
    constraint offer_pause_pk primary key (offer_id, paused_from),
    constraint offer_pause_offer_fk foreign key (offer_id) references offer (id),
    constraint offer_pause_dates_ck check (paused_to is null or paused_to >= paused_from)
);

create table sale (
    id uuid not null,
    channel_id uuid not null,
    buyer varchar(200) not null,
    order_reference varchar(80) not null,
    discount_minor bigint not null,
    shipping_minor bigint not null,
    tax_minor bigint not null,
    tax_passed boolean not null,
    fee_minor bigint not null,
    fee_place_id uuid,
    posted_on date,
    constraint sale_pk primary key (id),
    constraint sale_fee_place_fk foreign key (fee_place_id) references money_place (id),
    constraint sale_fee_place_ck check (fee_minor = 0 or fee_place_id is not null),
    constraint sale_document_fk foreign key (id) references document (id),
    constraint sale_channel_fk foreign key (channel_id) references channel (id),
    constraint sale_discount_ck check (discount_minor >= 0),
    constraint sale_shipping_ck check (shipping_minor >= 0),
    constraint sale_tax_ck check (tax_minor >= 0)
);

create table sale_line (
    sale_id uuid not null,
    line integer not null,
    title varchar(200) not null,
    quantity numeric(30, 14) not null,
    price_minor bigint not null,
    discount_minor bigint not null,
    supply_id uuid,
    content numeric(30, 14),
    constraint sale_line_pk primary key (sale_id, line),
    constraint sale_line_sale_fk foreign key (sale_id) references sale (id),
    constraint sale_line_supply_fk foreign key (supply_id) references supply (id),
    constraint sale_line_quantity_ck check (quantity > 0),
    constraint sale_line_price_ck check (price_minor >= 0),
    constraint sale_line_discount_ck check (discount_minor >= 0),
    constraint sale_line_content_ck check ((supply_id is null) = (content is null) and (content is null or content > 0))
);

create table sale_piece (
    sale_id uuid not null,
    line integer not null,
    piece_id uuid not null,
    weight numeric(30, 14) not null,
    constraint sale_piece_pk primary key (sale_id, piece_id),
    constraint sale_piece_sale_fk foreign key (sale_id) references sale (id),
    constraint sale_piece_piece_fk foreign key (piece_id) references piece (id),
    constraint sale_piece_weight_ck check (weight >= 0)
);

create table sale_payment (
    sale_id uuid not null,
    line integer not null,
    way varchar(20) not null,
    place_id uuid,
    amount_minor bigint not null,
    constraint sale_payment_pk primary key (sale_id, line),
    constraint sale_payment_sale_fk foreign key (sale_id) references sale (id),
    constraint sale_payment_place_fk foreign key (place_id) references money_place (id),
    constraint sale_payment_way_ck check (way in ('PLACE', 'OWED', 'DEPOSIT', 'STORE_CREDIT')),
    constraint sale_payment_place_ck check ((way = 'PLACE') = (place_id is not null))
);

-- Money from a buyer: for a sale that is owed, or ahead of one. For what was owed on the first day, sale_id names the opening.
create table payment (
    id uuid not null,
    sale_id uuid,
    buyer varchar(200) not null,
    place_id uuid not null,
    amount_minor bigint not null,
    constraint payment_pk primary key (id),
    constraint payment_document_fk foreign key (id) references document (id),
    constraint payment_sale_fk foreign key (sale_id) references document (id),
    constraint payment_place_fk foreign key (place_id) references money_place (id),
    constraint payment_amount_ck check (amount_minor > 0)
);

create table refund (
    id uuid not null,
    sale_id uuid not null,
    way varchar(20) not null,
    place_id uuid,
    shipping_minor bigint not null,
    tax_minor bigint not null,
    fee_back_minor bigint not null,
    fee_place_id uuid,
    constraint refund_pk primary key (id),
    constraint refund_fee_place_fk foreign key (fee_place_id) references money_place (id),
    constraint refund_fee_place_ck check (fee_back_minor = 0 or fee_place_id is not null),
    constraint refund_document_fk foreign key (id) references document (id),
    constraint refund_sale_fk foreign key (sale_id) references sale (id),
    constraint refund_place_fk foreign key (place_id) references money_place (id),
    constraint refund_way_ck check (way in ('PLACE', 'OWED', 'STORE_CREDIT')),
    constraint refund_place_ck check ((way = 'PLACE') = (place_id is not null)),
    constraint refund_amounts_ck check (shipping_minor >= 0 and tax_minor >= 0 and fee_back_minor >= 0)
);

create table refund_line (
    refund_id uuid not null,
    line integer not null,
    piece_id uuid,
    supply_id uuid,
    quantity numeric(30, 14),
    amount_minor bigint not null,
    comes_back boolean not null,
    constraint refund_line_pk primary key (refund_id, line),
    constraint refund_line_refund_fk foreign key (refund_id) references refund (id),
    constraint refund_line_piece_fk foreign key (piece_id) references piece (id),
    constraint refund_line_supply_fk foreign key (supply_id) references supply (id),
    constraint refund_line_amount_ck check (amount_minor >= 0),
    constraint refund_line_what_ck check ((piece_id is null) <> (supply_id is null)),
    constraint refund_line_quantity_ck check ((supply_id is null) = (quantity is null) and (quantity is null or quantity > 0))
);

create table payout (
    id uuid not null,
    from_place_id uuid not null,
    to_place_id uuid not null,
    amount_minor bigint not null,
    fee_minor bigint not null,
    constraint payout_pk primary key (id),
    constraint payout_document_fk foreign key (id) references document (id),
    constraint payout_from_fk foreign key (from_place_id) references money_place (id),
    constraint payout_to_fk foreign key (to_place_id) references money_place (id),
    constraint payout_places_ck check (from_place_id <> to_place_id),
    constraint payout_amounts_ck check (amount_minor >= 0 and fee_minor >= 0)
);

create table postage (
    id uuid not null,
    sale_id uuid,
    place_id uuid not null,
    carriage_minor bigint not null,
    packing_minor bigint not null,
    back boolean not null,
    constraint postage_pk primary key (id),
    constraint postage_document_fk foreign key (id) references document (id),
    constraint postage_sale_fk foreign key (sale_id) references sale (id),
    constraint postage_place_fk foreign key (place_id) references money_place (id),
    constraint postage_amounts_ck check (carriage_minor >= 0 and packing_minor >= 0)
);

create table expense (
    id uuid not null,
    category varchar(40) not null,
    payee varchar(200) not null,
    place_id uuid not null,
    amount_minor bigint not null,
    constraint expense_pk primary key (id),
    constraint expense_document_fk foreign key (id) references document (id),
    constraint expense_place_fk foreign key (place_id) references money_place (id),
    constraint expense_amount_ck check (amount_minor > 0)
);

create table other_income (
    id uuid not null,
    category varchar(40) not null,
    payer varchar(200) not null,
    place_id uuid not null,
    amount_minor bigint not null,
    constraint other_income_pk primary key (id),
    constraint other_income_document_fk foreign key (id) references document (id),
    constraint other_income_place_fk foreign key (place_id) references money_place (id),
    constraint other_income_amount_ck check (amount_minor > 0)
);

create table sales_tax_paid (
    id uuid not null,
    period varchar(40) not null,
    place_id uuid not null,
    amount_minor bigint not null,
    constraint sales_tax_paid_pk primary key (id),
    constraint sales_tax_paid_document_fk foreign key (id) references document (id),
    constraint sales_tax_paid_place_fk foreign key (place_id) references money_place (id),
    constraint sales_tax_paid_amount_ck check (amount_minor > 0)
);

create table owner_money (
    id uuid not null,
    direction varchar(3) not null,
    place_id uuid not null,
    amount_minor bigint not null,
    constraint owner_money_pk primary key (id),
    constraint owner_money_document_fk foreign key (id) references document (id),
    constraint owner_money_place_fk foreign key (place_id) references money_place (id),
    constraint owner_money_direction_ck check (direction in ('IN', 'OUT')),
    constraint owner_money_amount_ck check (amount_minor > 0)
);

create table money_move (
    id uuid not null,
    from_place_id uuid not null,
    to_place_id uuid not null,
    amount_minor bigint not null,
    constraint money_move_pk primary key (id),
    constraint money_move_document_fk foreign key (id) references document (id),
    constraint money_move_from_fk foreign key (from_place_id) references money_place (id),
    constraint money_move_to_fk foreign key (to_place_id) references money_place (id),
    constraint money_move_places_ck check (from_place_id <> to_place_id),
    constraint money_move_amount_ck check (amount_minor > 0)
);

create table letting_go (
    id uuid not null,
    piece_id uuid not null,
    reason varchar(10) not null,
    constraint letting_go_pk primary key (id),
    constraint letting_go_document_fk foreign key (id) references document (id),
    constraint letting_go_piece_fk foreign key (piece_id) references piece (id),
    constraint letting_go_reason_ck check (reason in ('BROKEN', 'GIVEN_AWAY', 'KEPT'))
);

create table year_seal (
    id uuid not null,
    tax_year integer not null,
    postings_hash varchar(64) not null,
    calculation_version integer not null,
    constraint year_seal_pk primary key (id),
    constraint year_seal_document_fk foreign key (id) references document (id),
    constraint year_seal_year_uk unique (tax_year)
);

-- Postings are derived from the documents and from nothing else.

create table posting (
    document_id uuid not null,
    line integer not null,
    doc_date date not null,
    account varchar(20) not null,
    place_id uuid,
    category varchar(40),
    piece_id uuid,
    supply_id uuid,
    party_id uuid,
    origin_id uuid,
    estimated boolean not null,
    amount_minor bigint not null,
    quantity numeric(30, 14) not null,
    constraint posting_pk primary key (document_id, line),
    constraint posting_document_fk foreign key (document_id) references document (id),
    constraint posting_place_fk foreign key (place_id) references money_place (id),
    constraint posting_piece_fk foreign key (piece_id) references piece (id),
    constraint posting_supply_fk foreign key (supply_id) references supply (id),
    constraint posting_party_fk foreign key (party_id) references source (id)
);

create index posting_account_ix on posting (account, doc_date);
create index posting_piece_ix on posting (piece_id);
create index posting_supply_ix on posting (supply_id);

-- Uses that no receipt has given a cost yet; derived like the postings.
create table uncosted_use (
    document_id uuid not null,
    line integer not null,
    supply_id uuid not null,
    place varchar(10) not null,
    quantity numeric(30, 14) not null,
    constraint uncosted_use_pk primary key (document_id, line),
    constraint uncosted_use_document_fk foreign key (document_id) references document (id),
    constraint uncosted_use_supply_fk foreign key (supply_id) references supply (id)
);

-- One row that a change of the books locks, so that two changes never derive at the same time.
create table books (
    id integer not null,
    changes bigint not null,
    constraint books_pk primary key (id),
    constraint books_one_ck check (id = 1)
);

insert into books (id, changes) values (1, 0);
