-- What never touches stock.
insert into entry (doc, account, category, amount) select id, 'EXPENSE', category, cents(amount) from expense;
insert into entry (doc, account, place, amount) select id, 'MONEY', place_id, -cents(amount) from expense;
insert into entry (doc, account, category, amount) select id, 'OTHER_INCOME', category, -cents(amount) from other_income;
insert into entry (doc, account, place, amount)
select id, 'MONEY', place_id, cents(amount) - coalesce(cents(fee), 0) from other_income;
insert into entry (doc, account, category, amount) select id, 'FEES', 'income', cents(fee) from other_income where fee <> '';
insert into entry (doc, account, category, amount)
select id, 'OTHER_INCOME', 'in kind', -cents("value") from supply_gift where for_work = 'yes';
insert into entry (doc, account, amount) select id, 'SALES_TAX_DUE', cents(amount) + coalesce(cents(allowance), 0) from sales_tax_paid;
insert into entry (doc, account, category, amount)
select id, 'OTHER_INCOME', 'sales tax allowance', -cents(allowance) from sales_tax_paid where cents(allowance) > 0;
insert into entry (doc, account, place, amount) select id, 'MONEY', place_id, -cents(amount) from sales_tax_paid;
insert into entry (doc, account, category, amount)
select id, 'OWNER_' || direction, 'money', case direction when 'IN' then -1 else 1 end * cents(amount) from owner_money;
insert into entry (doc, account, place, amount)
select id, 'MONEY', place_id, case direction when 'IN' then 1 else -1 end * cents(amount) from owner_money;
insert into entry (doc, account, place, amount) select id, 'MONEY', to_place_id, cents(amount) from money_move;
insert into entry (doc, account, place, amount) select id, 'MONEY', from_place_id, -cents(amount) from money_move;

insert into entry (doc, account, amount)
select id, 'VEHICLE', half_up(cast(miles as numeric(12, 4)) * cast(rate as numeric(12, 4)) * 100, 1) from trip;
insert into entry (doc, account, category, amount)
select id, 'OWNER_IN', 'vehicle', -half_up(cast(miles as numeric(12, 4)) * cast(rate as numeric(12, 4)) * 100, 1) from trip;

-- The first day: everything stands against one account. Owed amounts are typed as amounts and stand as credits.
insert into entry (doc, account, place, amount)
select opening_id, account, place_id,
       case when account in ('MONEY', 'RECEIVABLE', 'STORE_CREDIT_HELD') then 1 else -1 end * cents(amount)
from opening_balance;

insert into entry (doc, account, amount)
select e.doc, 'OPENING', -sum(e.amount) from entry e join doc d on d.id = e.doc where d.kind = 'opening' group by e.doc;

-- A count of a cash box: what it found is what was counted, less the count before it, less all that moved in between.
insert into entry (doc, account, place, amount)
select id, 'MONEY', place_id, counted - moved
from (
    select t.id, t.place_id, t.counted,
           t.counted_before + coalesce((select sum(e.amount) from entry e join doc d on d.id = e.doc
                                        where e.account = 'MONEY' and e.place = t.place_id
                                          and d.ord > t.ord_before and d.ord < t.ord), 0) as moved
    from (select c.id, c.place_id, d.ord, cents(c.counted) as counted,
                 coalesce(lag(cents(c.counted)) over (partition by c.place_id order by d.ord), 0) as counted_before,
                 coalesce(lag(d.ord) over (partition by c.place_id order by d.ord), 0) as ord_before
          from till_count c join doc d on d.id = c.id) t)
where counted <> moved;
insert into entry (doc, account, category, amount)
select e.doc, 'ROUNDING', 'cash_short_or_over', -e.amount
from entry e join doc d on d.id = e.doc where d.kind = 'till_count';
