-- Bench and shelf: lots in, drains out.
insert into entry (doc, account, supply, amount, quantity)
select d.id, l.place, l.supply, l.cost, l.quantity from lot l join doc d on d.ord = l.ord;

insert into entry (doc, account, supply, amount)
select d.id, 'BENCH', l.supply, l.amount from late l join doc d on d.ord = l.ord;

insert into entry (doc, account, supply, amount)
select d.id, o.place, o.supply, -o.amount from outflow o join doc d on d.ord = o.ord;

insert into entry (doc, account, supply, amount, quantity)
select d.id, r.place, r.supply, 0, -r.quantity from drain r join doc d on d.ord = r.ord;

insert into entry (doc, account, supply, amount, quantity)
select d.id, 'SHELF', b.supply, 0, b.quantity from back b join doc d on d.ord = b.ord;

-- Retail sold and goods returned to a source; a taking has its other side in its lot.
insert into entry (doc, account, category, supply, amount)
select d.id, case u.kind when 'sale' then 'COST_OF_RETAIL' else 'WRITE_OFFS' end,
       case u.kind when 'sale' then null else 'returned' end, o.supply, o.amount
from outflow o
join doc u on u.ord = o.drain_ord
join doc d on d.ord = o.ord
where u.kind = 'supplier_return' or u.kind = 'sale' and o.place = 'SHELF';

-- What a sale was packed in is an expense, whenever it gets its cost.
insert into entry (doc, account, category, supply, amount, origin)
select d.id, 'EXPENSE', 'packaging', o.supply, o.amount, u.id
from outflow o
join doc u on u.ord = o.drain_ord
join doc d on d.ord = o.ord
where u.kind = 'sale' and o.place = 'BENCH';

-- Counts.
insert into entry (doc, account, supply, amount, quantity)
select d.id, r.place, r.supply, r.found - r.written_off, r.quantity from count_result r join doc d on d.ord = r.ord;
insert into entry (doc, account, category, supply, amount)
select d.id, 'WRITE_OFFS', 'count', r.supply, r.written_off from count_result r join doc d on d.ord = r.ord where r.written_off <> 0;
insert into entry (doc, account, supply, amount)
select d.id, 'FOUND_AT_COUNT', r.supply, -r.found from count_result r join doc d on d.ord = r.ord where r.found <> 0;

-- The rest of a receipt: expenses, home, charity, cash rounding, how it was paid.
insert into entry (doc, account, category, amount)
select l.receipt_id, case l.kind when 'EXPENSE' then 'EXPENSE' else 'OWNER_OUT' end,
       case l.kind when 'EXPENSE' then r.category else lower(l.kind) end, l.landed
from landing l
join receipt_line r on r.receipt_id = l.receipt_id and cast(r.line as int) = l.line
where l.kind in ('EXPENSE', 'HOME', 'CHARITY');

insert into entry (doc, account, amount)
select receipt_id, 'ROUNDING', cents(amount) from receipt_charge where kind = 'ROUNDING';

insert into entry (doc, account, place, amount)
select receipt_id,
       case way when 'PLACE' then 'MONEY' when 'OWED' then 'PAYABLE' when 'STORE_CREDIT' then 'STORE_CREDIT_HELD' else 'OWNER_IN' end,
       place_id, -cents(amount)
from receipt_payment;

-- What a source gave for returned goods.
insert into entry (doc, account, category, amount)
select id, 'WRITE_OFFS', 'returned', -cents(amount) from supplier_return;
insert into entry (doc, account, place, amount)
select id, case way when 'PLACE' then 'MONEY' when 'OWED' then 'PAYABLE' else 'STORE_CREDIT_HELD' end, place_id, cents(amount)
from supplier_return;

insert into entry (doc, account, amount) select id, 'PAYABLE', cents(amount) from bill_paid;
insert into entry (doc, account, place, amount) select id, 'MONEY', place_id, -cents(amount) from bill_paid;
