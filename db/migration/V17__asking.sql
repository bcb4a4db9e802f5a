-- What a channel keeps whether anything sells or not, dated with the rest of its fee rule: for each offer put up, and
-- for each month. Neither is part of the fee of a sale.
alter table channel_fee add column offer_minor bigint;
alter table channel_fee add column month_minor bigint;
alter table channel_fee add constraint channel_fee_offer_ck check (offer_minor >= 0);
alter table channel_fee add constraint channel_fee_month_ck check (month_minor >= 0);

-- What she usually charges and spends for a sale on a channel; what a trial sum and the price to ask start from.
create table channel_usual (
    channel_id uuid not null,
    shipping_minor bigint not null,
    outlay_minor bigint not null,
    tax_percent numeric(9, 4) not null,
    shipping_taxed boolean not null,
    constraint channel_usual_pk primary key (channel_id),
    constraint channel_usual_channel_fk foreign key (channel_id) references channel (id),
    constraint channel_usual_shipping_ck check (shipping_minor >= 0),
    constraint channel_usual_outlay_ck check (outlay_minor >= 0),
    constraint channel_usual_tax_ck check (tax_percent >= 0)
);

-- A fee for an offer or a month that is settled: by an expense, or without one where it was not owed. Taking back the
-- expense makes it due again.
create table channel_charge (
    id uuid not null,
    channel_id uuid not null,
    offer_id uuid,
    for_month date,
    expense_id uuid,
    version bigint default 0 not null,
    constraint channel_charge_pk primary key (id),
    constraint channel_charge_offer_uk unique (channel_id, offer_id),
    constraint channel_charge_month_uk unique (channel_id, for_month),
    constraint channel_charge_channel_fk foreign key (channel_id) references channel (id),
    constraint channel_charge_offer_fk foreign key (offer_id) references offer (id) on delete cascade,
    constraint channel_charge_expense_fk foreign key (expense_id) references expense (id) on delete cascade,
    constraint channel_charge_what_ck check ((offer_id is null) <> (for_month is null))
);

-- Her plan of mark-downs: after so many days on offer, so much less than the price first asked.
create table mark_down_step (
    after_days integer not null,
    percent numeric(9, 4) not null,
    constraint mark_down_step_pk primary key (after_days),
    constraint mark_down_step_days_ck check (after_days between 1 and 3650),
    constraint mark_down_step_percent_ck check (percent > 0 and percent < 100)
);
