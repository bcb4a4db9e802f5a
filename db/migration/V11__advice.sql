-- What she aims at: what the sums of what to pay and what to ask start from. One row at most; none until she says
-- something of her own.

create table aim (
    shop_id integer not null,
    horizon_days integer not null,
    salvage_minor bigint not null,
    target_minor bigint not null,
    target_percent numeric(9, 4),
    purchase_tax_percent numeric(9, 4) not null,
    price_endings varchar(120) not null,
    version bigint not null,
    constraint aim_pk primary key (shop_id),
    constraint aim_only_one_ck check (shop_id = 1),
    constraint aim_horizon_ck check (horizon_days between 1 and 3650),
    constraint aim_salvage_ck check (salvage_minor >= 0),
    constraint aim_target_ck check (target_minor >= 0),
    constraint aim_target_percent_ck check (target_percent >= 0),
    constraint aim_purchase_tax_ck check (purchase_tax_percent >= 0)
);

-- A fuller rule of what a channel keeps. Where all of this is null, the rule is what it was: percent of price and
-- shipping, plus the fixed amount.
alter table channel_fee add column base varchar(20);
alter table channel_fee add column least_minor bigint;
alter table channel_fee add column most_minor bigint;
alter table channel_fee add column above_minor bigint;
alter table channel_fee add column above_percent numeric(9, 4);
alter table channel_fee add column further_above_minor bigint;
alter table channel_fee add column further_percent numeric(9, 4);
alter table channel_fee add column above_on_whole boolean;
alter table channel_fee add column payment_percent numeric(9, 4);
alter table channel_fee add column payment_fixed_minor bigint;
alter table channel_fee add constraint channel_fee_base_ck check (base in ('PRICE', 'PRICE_AND_SHIPPING', 'ALL_WITH_TAX'));
alter table channel_fee add constraint channel_fee_least_ck check (least_minor >= 0);
alter table channel_fee add constraint channel_fee_most_ck check (most_minor >= 0);
alter table channel_fee add constraint channel_fee_above_ck
    check ((above_minor is null) = (above_percent is null) and (above_minor is null or above_minor > 0 and above_percent >= 0));
alter table channel_fee add constraint channel_fee_further_ck
    check ((further_above_minor is null) = (further_percent is null)
        and (further_above_minor is null or further_percent >= 0 and above_minor is not null and further_above_minor > above_minor));
alter table channel_fee add constraint channel_fee_payment_ck check (payment_percent >= 0 and payment_fixed_minor >= 0);
