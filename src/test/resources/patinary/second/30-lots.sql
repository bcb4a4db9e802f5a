-- Cost that reached a piece, by the document that brought it; receipts and opening first.
create table piece_cost (
    ord bigint not null,
    piece varchar not null,
    amount bigint not null,
    supply varchar
);

delete from to_share;
insert into to_share
select l.receipt_id || '/' || l.line, p.piece_id, l.landed, cast(p.weight as numeric(30, 14))
from landing l
join receipt_piece p on p.receipt_id = l.receipt_id and cast(p.line as int) = l.line
where l.kind = 'PIECES';

insert into piece_cost
select d.ord, s.part, s.amount, null from shared s join doc d on d.id = substring(s.grp, 1, 36);

insert into piece_cost
select d.ord, o.piece_id, cents(o.cost), null from opening_piece o join doc d on d.id = o.opening_id;

-- What the owner of a piece gets reaches it when it is sold, and leaves it where it comes back.
insert into piece_cost
select d.ord, p.piece_id, cents(p.owner), null from sale_piece p join doc d on d.id = p.sale_id where p.owner <> '';
insert into piece_cost
select d.ord, l.piece_id, -cents(l.owner), null from refund_line l join doc d on d.id = l.refund_id where l.owner <> '';

-- Lots, as they come to bench and shelf.
create table lot (
    ord bigint not null,
    line int not null,
    supply varchar not null,
    place varchar not null,
    quantity numeric(30, 14) not null,
    cost bigint not null
);

insert into lot
select d.ord, cast(o.line as int), o.supply_id, o.place, cast(o.quantity as numeric(30, 14)), cents(o.cost)
from opening_supply o join doc d on d.id = o.opening_id;

insert into lot
select d.ord, l.line, r.supply_id, case l.kind when 'SHELF' then 'SHELF' else 'BENCH' end,
       cast(r.quantity as numeric(30, 14)) * cast(r.content as numeric(30, 14)), l.landed
from landing l
join receipt_line r on r.receipt_id = l.receipt_id and cast(r.line as int) = l.line
join doc d on d.id = l.receipt_id
where l.kind in ('SUPPLY', 'SHELF');

insert into lot
select d.ord, 1, g.supply_id, 'BENCH', cast(g.quantity as numeric(30, 14)),
       case g.for_work when 'yes' then cents(g."value") else 0 end
from supply_gift g join doc d on d.id = g.id;

-- What takes supplies away: uses, returns, takings, retail sold, what sales were packed in.
create table drain (
    ord bigint not null,
    line int not null,
    supply varchar not null,
    place varchar not null,
    quantity numeric(30, 14) not null,
    by_eye varchar not null
);

insert into drain
select d.ord, cast(u.line as int), u.supply_id, 'BENCH', cast(u.quantity as numeric(30, 14)), u.estimated
from bench_use u join doc d on d.id = u.bench_entry_id;

insert into drain
select d.ord, cast(r.line as int), r.supply_id, r.place, cast(r.quantity as numeric(30, 14)), 'no'
from supplier_return_supply r join doc d on d.id = r.supplier_return_id;

insert into drain
select d.ord, 1, t.supply_id, 'SHELF', cast(t.quantity as numeric(30, 14)), 'no'
from taking t join doc d on d.id = t.id;

insert into drain
select d.ord, cast(l.line as int), l.supply_id, 'SHELF',
       cast(l.quantity as numeric(30, 14)) * cast(l.content as numeric(30, 14)), 'no'
from sale_line l join doc d on d.id = l.sale_id
where l.supply_id is not null;

-- Beside what was sold; a sale takes what it is packed in last.
insert into drain
select d.ord, 1000 + cast(w.line as int), w.supply_id, 'BENCH', cast(w.quantity as numeric(30, 14)), w.estimated
from sale_wrap w join doc d on d.id = w.sale_id;

-- What came back to the shelf from a sale, and the lines of that sale that had taken it.
create view back as
select d.ord, cast(l.line as int) as line, l.supply_id as supply, cast(l.quantity as numeric(30, 14)) as quantity, s.ord as sale_ord
from refund_line l
join doc d on d.id = l.refund_id
join refund r on r.id = l.refund_id
join doc s on s.id = r.sale_id
where l.supply_id is not null and l.comes_back = 'yes';

-- Supplies that were counted somewhere, or came back; that changes what went before, and intervals do not reach.
-- Kept pots are walked by themselves, when what is in them has its cost.
create view counted as
select distinct supply_id as supply, place from supply_count
where supply_id not in (select kept_as from bench_pot where kept_as is not null)
union
select supply, 'SHELF' from back;

-- First in, first out as intervals: lots laid end to end, drains laid end to end, matched where they overlap.
create view lot_span as
select l.*, sum(quantity) over (partition by supply, place order by ord, line) as upto from lot l;

create view drain_span as
select r.*, sum(quantity) over (partition by supply, place order by ord, line) as upto from drain r;

create view match as
select supply, place, lot_ord, drain_ord, drain_line, greatest(lot_ord, drain_ord) as ord, upper_end - lower_end as quantity,
       half_up(cost * (upper_end - lot_from), lot_quantity) - half_up(cost * (lower_end - lot_from), lot_quantity) as amount
from (
    select l.supply, l.place, l.ord as lot_ord, r.ord as drain_ord, r.line as drain_line, l.cost, l.quantity as lot_quantity,
           l.upto - l.quantity as lot_from,
           greatest(l.upto - l.quantity, r.upto - r.quantity) as lower_end, least(l.upto, r.upto) as upper_end
    from lot_span l
    join drain_span r on r.supply = l.supply and r.place = l.place
)
where upper_end > lower_end;

-- What each drain cost, and on which document that cost came to light.
create table outflow (
    ord bigint not null,
    drain_ord bigint not null,
    drain_line int not null,
    supply varchar not null,
    place varchar not null,
    amount bigint not null
);

insert into outflow
select ord, drain_ord, drain_line, supply, place, amount
from match where place = 'SHELF' and (supply, place) not in (select supply, place from counted);

-- What was taken from the shelf is a lot of the bench, at what it cost there.
insert into lot
select m.drain_ord, row_number() over (partition by m.drain_ord order by m.lot_ord), m.supply, 'BENCH', m.quantity, m.amount
from match m join doc d on d.ord = m.drain_ord
where m.place = 'SHELF' and d.kind = 'taking';

insert into outflow
select ord, drain_ord, drain_line, supply, place, amount
from match where place = 'BENCH' and (supply, place) not in (select supply, place from counted);

-- Where a use went: on pieces, and into pots that were kept. Ties between remainders go to pieces before pots.
create table part_of_use as
select bench_entry_id, line, piece_id as part, weight from bench_use_piece
union all
select bench_entry_id, line, 'pot ' || supply_id, weight from bench_use_pot;

-- What a use cost so far, at each document that changed it.
create view use_so_far as
select ord, drain_ord, drain_line, supply,
       sum(amount) over (partition by drain_ord, drain_line order by ord) as amount
from (select o.ord, o.drain_ord, o.drain_line, o.supply, sum(o.amount) as amount
      from outflow o join doc d on d.ord = o.drain_ord
      where d.kind = 'bench_entry' group by o.ord, o.drain_ord, o.drain_line, o.supply);

-- Cost that reached a kept pot after it was mixed; it brings no quantity.
create table late (
    ord bigint not null,
    supply varchar not null,
    amount bigint not null
);

-- What counts do beyond the uses: positive leaves to write-offs, negative was found.
create table count_result (
    ord bigint not null,
    supply varchar not null,
    place varchar not null,
    quantity numeric(30, 14) not null,
    written_off bigint not null,
    found bigint not null
);
