-- Every document with its place in the canonical order: date, kind, id as text.
create table doc as
select row_number() over (order by on_day, rank_no, id) as ord, id, on_day, kind
from (
    select id, cast(date as date) as on_day, 1 as rank_no, 'opening' as kind from opening
    union all select id, cast(date as date), 2, 'receipt' from receipt
    union all select id, cast(date as date), 3, 'supplier_return' from supplier_return
    union all select id, cast(date as date), 4, 'taking' from taking
    union all select id, cast(date as date), 5, 'bench_entry' from bench_entry
    union all select id, cast(date as date), 6, 'supply_count' from supply_count
    union all select id, cast(date as date), 7, 'sale' from sale
    union all select id, cast(date as date), 8, 'refund' from refund
    union all select id, cast(date as date), 9, 'trip' from trip
    union all select id, cast(date as date), 9, 'bill_paid' from bill_paid
    union all select id, cast(date as date), 9, 'regrouping' from regrouping
    union all select id, cast(date as date), 9, 'payment' from payment
    union all select id, cast(date as date), 9, 'payout' from payout
    union all select id, cast(date as date), 9, 'postage' from postage
    union all select id, cast(date as date), 9, 'expense' from expense
    union all select id, cast(date as date), 9, 'other_income' from other_income
    union all select id, cast(date as date), 9, 'sales_tax_paid' from sales_tax_paid
    union all select id, cast(date as date), 9, 'owner_money' from owner_money
    union all select id, cast(date as date), 9, 'money_move' from money_move
    union all select id, cast(date as date), 9, 'letting_go' from letting_go
    union all select id, cast(date as date), 10, 'till_count' from till_count
    union all select id, cast(date as date), 11, 'supply_gift' from supply_gift
);
alter table doc alter column id set not null;
alter table doc add primary key (id);

-- The books of this road: what each document does to each account, in cents.
create table entry (
    doc varchar not null,
    account varchar not null,
    place varchar,
    category varchar,
    piece varchar,
    supply varchar,
    amount bigint not null,
    quantity numeric(30, 14) default 0 not null,
    origin varchar
);

-- Largest remainder over any number of groups at once. Exact: MOD leaves no decimals behind.
create table to_share (
    grp varchar not null,
    part varchar not null,
    total bigint not null,
    weight numeric(30, 14) not null
);

create view shared as
with weighed as (
    select grp, part, total,
           case when sum(weight) over (partition by grp) = 0 then 1 else weight end as weight
    from to_share
), quota as (
    select grp, part, total, abs(total) * weight as claim, sum(weight) over (partition by grp) as weights
    from weighed
), whole as (
    select grp, part, total, (claim - mod(claim, weights)) / weights as units,
           row_number() over (partition by grp order by mod(claim, weights) desc, part) as turn
    from quota
)
select grp, part,
       cast(sign(total) * (units + case
           when turn <= abs(total) - sum(units) over (partition by grp) then 1 else 0 end) as bigint) as amount
from whole;
