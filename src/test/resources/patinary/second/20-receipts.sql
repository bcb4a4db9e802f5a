-- Line nets, and the order in which a receipt's charges are worked.
create table landing as
select receipt_id, cast(line as int) as line, kind, gross - coalesce(off, half_up(gross * percent, 100), 0) as net,
       gross - coalesce(off, half_up(gross * percent, 100), 0) as remaining,
       gross - coalesce(off, half_up(gross * percent, 100), 0) as taxable,
       gross - coalesce(off, half_up(gross * percent, 100), 0) as landed
from (
    select receipt_id, line, kind,
           half_up(cast(quantity as numeric(30, 14)) * cents(price), 1) as gross,
           cents(discount) as off, cast(discount_percent as numeric(9, 4)) as percent
    from receipt_line
);

create table charge as
select receipt_id, cast(line as int) as charge, stage, taxed, percent, amount,
       row_number() over (partition by receipt_id order by stage, cast(line as int)) as turn
from (
    select receipt_id, line, taxed, cast(percent as numeric(9, 4)) as percent, cents(amount) as amount,
           case when kind = 'DISCOUNT' and after_tax = 'no' then 1
                when kind in ('SHIPPING', 'PREMIUM', 'FEE') then 2
                when kind = 'TAX' then 3
                when kind = 'DISCOUNT' then 4 end as stage
    from receipt_charge
    where kind <> 'ROUNDING'
);

create table charge_target as
select c.receipt_id, c.charge, l.line
from charge c
join landing l on l.receipt_id = c.receipt_id
where exists (select 1 from receipt_charge_line n
              where n.receipt_id = c.receipt_id and cast(n.charge as int) = c.charge and cast(n.line as int) = l.line)
   or (l.kind <> 'CHARITY'
       and not exists (select 1 from receipt_charge_line n
                       where n.receipt_id = c.receipt_id and cast(n.charge as int) = c.charge));

create table turn (no int);
insert into turn values (0);
