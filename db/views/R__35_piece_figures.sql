-- Made anew with all views: ${views}

-- What each piece cost and earned so far, and where it stands; money from the postings, minutes from the bench entries.

-- As in sale_part, all is gathered in one pass and added up by piece.

-- A use that has no cost yet names its entry and its supply, not the line: where one entry used a supply on two lines, the pieces
-- of both wait together.
drop view if exists uncosted_piece cascade;

create view uncosted_piece as
select up.piece_id
from uncosted_use uu
join bench_use bu on bu.bench_entry_id = uu.document_id and bu.supply_id = uu.supply_id
join bench_use_piece up on up.bench_entry_id = bu.bench_entry_id and up.line = bu.line;

drop view if exists piece_figures_anew cascade;

create view piece_figures_anew as
with amount as (
    -- The many postings are added up before they are put beside the rest: H2 copies every row of a union.
    select t.piece_id,
           -- What a sale owes the owner of a piece is its purchase; all else that sales and refunds do to it adds to zero.
           sum(case when p.supply_id is null and d.kind in ('RECEIPT', 'OPENING', 'SALE', 'REFUND') then p.amount_minor else 0 end)
               as purchase_minor,
           sum(case when p.supply_id is not null then p.amount_minor else 0 end) as supplies_minor,
           sum(case when d.kind = 'REGROUPING' then p.amount_minor else 0 end) as regrouped_minor,
           sum(case when p.estimated and (p.supply_id is not null or d.kind in ('RECEIPT', 'OPENING', 'REGROUPING'))
               then p.amount_minor else 0 end) as estimated_minor,
           sum(case when p.account = 'PIECES' then p.amount_minor else 0 end) as in_stock_minor,
           sum(case when p.account = 'COST_OF_PIECES' then p.amount_minor else 0 end) as cost_minor,
           cast(0 as numeric(18, 6)) as minutes,
           cast(0 as bigint) as sales_minor,
           cast(0 as bigint) as shipping_minor,
           cast(0 as bigint) as refunds_minor,
           cast(0 as bigint) as fees_minor,
           cast(0 as bigint) as postage_minor,
           cast(0 as bigint) as packaging_minor,
           0 as uncosted,
           cast(null as varchar(10)) as state,
           cast(null as date) as since,
           cast(null as date) as found_on,
           cast(null as date) as offered_on,
           cast(null as date) as sold_on,
           max(case when p.account = 'PIECES' then p.doc_date end) as stocked_until
    from touched_piece t
    join posting p on p.piece_id = t.piece_id
    join document d on d.id = p.document_id
    where p.account in ('PIECES', 'COST_OF_PIECES', 'WRITE_OFFS', 'OWN_USE')
    group by t.piece_id
    union all
    select bp.piece_id, 0, 0, 0, 0, 0, 0,
           cast(be.minutes as numeric(18, 6))
               / (select count(*) from bench_piece entry where entry.bench_entry_id = bp.bench_entry_id),
           0, 0, 0, 0, 0, 0, 0, null, null, null, null, null, null
    from touched_piece t
    join bench_piece bp on bp.piece_id = t.piece_id
    join bench_entry be on be.id = bp.bench_entry_id
    union all
    select sp.piece_id, 0, 0, 0, 0, 0, 0, 0,
           sp.price_minor, sp.shipping_minor, sp.refund_minor, sp.fee_minor, sp.postage_minor, sp.packaging_minor,
           0, null, null, null, null, d.doc_date, null
    from touched_piece t
    join sale_part sp on sp.piece_id = t.piece_id
    join document d on d.id = sp.sale_id
    where not sp.undelivered
    union all
    select up.piece_id, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1, null, null, null, null, null, null
    from touched_piece t
    join uncosted_piece up on up.piece_id = t.piece_id
    union all
    select op.piece_id, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, null, null, null, d.doc_date, null, null
    from touched_piece t
    join offer_piece op on op.piece_id = t.piece_id
    join document d on d.id = op.offer_id
    union all
    select s.piece_id, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, s.state, s.since, s.found_on, null, null, null
    from touched_piece t
    join piece_state s on s.piece_id = t.piece_id
)
select piece_id,
       cast(sum(purchase_minor) as bigint) as purchase_minor,
       cast(sum(supplies_minor) as bigint) as supplies_minor,
       cast(sum(regrouped_minor) as bigint) as regrouped_minor,
       cast(sum(purchase_minor + supplies_minor + regrouped_minor) as bigint) as landed_minor,
       cast(sum(estimated_minor) as bigint) as estimated_minor,
       cast(sum(in_stock_minor) as bigint) as in_stock_minor,
       cast(sum(cost_minor) as bigint) as cost_minor,
       cast(sum(minutes) as numeric(18, 2)) as minutes,
       cast(sum(sales_minor) as bigint) as sales_minor,
       cast(sum(shipping_minor) as bigint) as shipping_minor,
       cast(sum(refunds_minor) as bigint) as refunds_minor,
       cast(sum(fees_minor) as bigint) as fees_minor,
       cast(sum(postage_minor) as bigint) as postage_minor,
       cast(sum(packaging_minor) as bigint) as packaging_minor,
       cast(sum(sales_minor + shipping_minor - refunds_minor - fees_minor - postage_minor - packaging_minor - cost_minor)
            as bigint) as profit_minor,
       max(uncosted) = 1 as uncosted,
       max(state) as state,
       max(since) as since,
       max(found_on) as found_on,
       min(offered_on) as offered_on,
       case when max(state) = 'SOLD' then max(sold_on) end as sold_on,
       (select os.first_price_minor
        from offer_piece op
        join offer_state os on os.offer_id = op.offer_id
        where op.piece_id = amount.piece_id and os.first_price_minor is not null
        order by os.started_on, op.offer_id
        fetch first 1 row only) as asked_first_minor,
       max(stocked_until) as stocked_until
from amount
group by piece_id;

drop view if exists piece_stock_anew cascade;

create view piece_stock_anew as
select t.piece_id, p.doc_date, cast(sum(p.amount_minor) as bigint) as amount_minor
from touched_piece t
join posting p on p.piece_id = t.piece_id
where p.account = 'PIECES'
group by t.piece_id, p.doc_date
having sum(p.amount_minor) <> 0;

drop view if exists piece_line_anew cascade;

-- The same postings that piece_figures counts as supplies, parted by supply line.
create view piece_line_anew as
select x.piece_id, x.supply_line_id, max(x.worked) = 1 as worked, cast(sum(x.cost_minor) as bigint) as cost_minor
from (select t.piece_id, su.supply_line_id, 0 as worked, sum(p.amount_minor) as cost_minor
      from touched_piece t
      join posting p on p.piece_id = t.piece_id
      join supply su on su.id = p.supply_id
      where p.account in ('PIECES', 'COST_OF_PIECES', 'WRITE_OFFS', 'OWN_USE')
      group by t.piece_id, su.supply_line_id
      union all
      select up.piece_id, su.supply_line_id, 1, null
      from touched_piece t
      join bench_use_piece up on up.piece_id = t.piece_id
      join bench_use bu on bu.bench_entry_id = up.bench_entry_id and bu.line = up.line
      join supply su on su.id = bu.supply_id) x
group by x.piece_id, x.supply_line_id;
