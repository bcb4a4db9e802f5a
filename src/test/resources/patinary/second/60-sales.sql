-- Each line's net, its share of what belongs to the whole sale, and the things on it.
create table sold_line as
select sale_id, cast(line as int) as line, supply_id as supply,
       half_up(cast(quantity as numeric(30, 14)) * cents(price), 1) - cents(discount) as net
from sale_line;

delete from to_share;
insert into to_share
select w.what || '/' || s.id, lpad(l.line, 6, '0'),
       case w.what when 'discount' then cents(s.discount) when 'shipping' then cents(s.shipping) else cents(s.fee) end, l.net
from sale s
join sold_line l on l.sale_id = s.id
cross join (values ('discount'), ('shipping'), ('fee')) w (what);

create table line_share as
select substring(grp, 1, locate('/', grp) - 1) as what, substring(grp, locate('/', grp) + 1) as sale_id,
       cast(part as int) as line, amount
from shared;

-- Over the pieces of a line by weight, those that were never sent too; a line without pieces is one thing.
delete from to_share;
insert into to_share
select a.what || '/' || a.sale_id || '/' || a.line, coalesce(p.piece_id, '-'), a.amount, coalesce(cast(p.weight as numeric(30, 14)), 1)
from (
    select 'price' as what, l.sale_id, l.line, l.net - s.amount as amount
    from sold_line l join line_share s on s.what = 'discount' and s.sale_id = l.sale_id and s.line = l.line
    union all
    select what, sale_id, line, amount from line_share where what <> 'discount'
) a
left join (select sale_id, line, piece_id, weight from sale_piece
           union all
           select sale_id, line, piece_id, weight from sale_undelivered) p
    on p.sale_id = a.sale_id and cast(p.line as int) = a.line;

create table sold_thing as
select p.what, p.sale_id, p.line, nullif(s.part, '-') as piece, l.supply, s.amount
from shared s
join (select distinct w.what, l.sale_id, l.line, w.what || '/' || l.sale_id || '/' || l.line as grp
      from sold_line l cross join (values ('price'), ('shipping'), ('fee')) w (what)) p on p.grp = s.grp
join sold_line l on l.sale_id = p.sale_id and l.line = p.line;

insert into entry (doc, account, category, piece, supply, amount)
select sale_id, case what when 'price' then 'SALES' when 'shipping' then 'SHIPPING_CHARGED' else 'FEES' end,
       case what when 'fee' then 'sale' end, piece, supply, case what when 'fee' then amount else -amount end
from sold_thing;

insert into entry (doc, account, category, amount)
select id, 'OTHER_INCOME', 'tip', -cents(tip) from sale where tip <> '';
insert into entry (doc, account, amount)
select id, 'SALES_TAX_DUE', -cents(tax) from sale where tax_passed = 'no';
insert into entry (doc, account, place, amount)
select id, 'MONEY', fee_place_id, -cents(fee) from sale where cents(fee) <> 0;
insert into entry (doc, account, place, amount)
select sale_id,
       case way when 'PLACE' then 'MONEY' when 'OWED' then 'RECEIVABLE' when 'DEPOSIT' then 'CUSTOMER_DEPOSITS' else 'STORE_CREDIT_GIVEN' end,
       place_id, cents(amount)
from sale_payment;

-- Refunds.
insert into entry (doc, account, piece, supply, amount)
select refund_id, 'REFUNDS', piece_id, supply_id, cents(amount) from refund_line;
insert into entry (doc, account, category, amount) select id, 'REFUNDS', 'shipping', cents(shipping) from refund;
insert into entry (doc, account, amount) select id, 'SALES_TAX_DUE', cents(tax) from refund;
insert into entry (doc, account, category, amount) select id, 'FEES', 'sale', -cents(fee_back) from refund;
insert into entry (doc, account, place, amount)
select id, 'MONEY', fee_place_id, cents(fee_back) from refund where cents(fee_back) <> 0;
insert into entry (doc, account, place, amount)
select r.id, case r.way when 'PLACE' then 'MONEY' when 'OWED' then 'RECEIVABLE' else 'STORE_CREDIT_GIVEN' end, r.place_id,
       -(cents(r.shipping) + cents(r.tax) + coalesce((select sum(cents(l.amount)) from refund_line l where l.refund_id = r.id), 0))
from refund r;

-- What owners get for pieces that were not hers: a cost of what was sold and owed to them; no longer where the piece came back.
-- It reached the piece before it left, so it left with it.
create table owner_share as
select sale_id as doc, piece_id as piece, cents(owner) as amount from sale_piece where owner <> ''
union all
select refund_id, piece_id, -cents(owner) from refund_line where owner <> '';
insert into entry (doc, account, piece, amount) select doc, 'PAYABLE', piece, -amount from owner_share;
insert into entry (doc, account, piece, amount)
select o.doc, w.account, o.piece, w.sign * o.amount
from owner_share o
join doc d on d.id = o.doc
cross join (values ('sale', 'PIECES', -1), ('sale', 'COST_OF_PIECES', 1), ('refund', 'COST_OF_PIECES', -1), ('refund', 'PIECES', 1)) w (kind, account, sign)
where d.kind = w.kind;

-- Payments, postage, payouts.
insert into entry (doc, account, place, amount) select id, 'MONEY', place_id, cents(amount) from payment;
insert into entry (doc, account, amount)
select id, case when sale_id is null then 'CUSTOMER_DEPOSITS' else 'RECEIVABLE' end, -cents(amount) from payment;
insert into entry (doc, account, category, amount)
select id, 'POSTAGE', case back when 'yes' then 'carriage-back' else 'carriage' end, cents(carriage) from postage;
insert into entry (doc, account, category, amount) select id, 'POSTAGE', 'packing', cents(packing) from postage;
insert into entry (doc, account, place, amount) select id, 'MONEY', place_id, -cents(carriage) - cents(packing) from postage;
insert into entry (doc, account, place, amount) select id, 'MONEY', to_place_id, cents(amount) from payout;
insert into entry (doc, account, category, amount) select id, 'FEES', 'payout', cents(fee) from payout;
insert into entry (doc, account, place, amount) select id, 'MONEY', from_place_id, -cents(amount) - cents(fee) from payout;
