-- What each piece cost and earned so far; money from the postings, minutes from the bench entries.

-- Made anew with piece_state, which it reads.

drop view if exists piece_figures cascade;

create view piece_figures as
with into_piece as (
    select p.piece_id,
           sum(case when p.supply_id is null and d.kind in ('RECEIPT', 'OPENING') then p.amount_minor else 0 end) as purchase_minor,
           sum(case when p.supply_id is not null then p.amount_minor else 0 end) as supplies_minor,
           sum(case when d.kind = 'REGROUPING' then p.amount_minor else 0 end) as regrouped_minor,
           sum(case when p.estimated and (p.supply_id is not null or d.kind in ('RECEIPT', 'OPENING', 'REGROUPING'))
               then p.amount_minor else 0 end) as estimated_minor,
           sum(case when p.account = 'PIECES' then p.amount_minor else 0 end) as in_stock_minor,
           sum(case when p.account = 'COST_OF_PIECES' then p.amount_minor else 0 end) as cost_minor
    from posting p
    join document d on d.id = p.document_id
    where p.piece_id is not null and p.account in ('PIECES', 'COST_OF_PIECES', 'WRITE_OFFS', 'OWN_USE')
    group by p.piece_id
),
work as (
    select bp.piece_id, sum(cast(be.minutes as numeric(18, 6)) / entry.pieces) as minutes
    from bench_piece bp
    join bench_entry be on be.id = bp.bench_entry_id
    join (select bench_entry_id, count(*) as pieces from bench_piece group by bench_entry_id) entry
        on entry.bench_entry_id = bp.bench_entry_id
    group by bp.piece_id
),
sold as (
    select sp.piece_id,
           sum(sp.price_minor) as sales_minor,
           sum(sp.shipping_minor) as shipping_minor,
           sum(sp.refund_minor) as refunds_minor,
           sum(sp.fee_minor) as fees_minor,
           sum(sp.postage_minor) as postage_minor
    from sale_part sp
    where sp.piece_id is not null
    group by sp.piece_id
),
-- A use that has no cost yet names its entry and its supply, not the line: where one entry used a supply on two lines,
-- the pieces of both wait together.
waiting as (
    select distinct up.piece_id
    from uncosted_use uu
    join bench_use bu on bu.bench_entry_id = uu.document_id and bu.supply_id = uu.supply_id
    join bench_use_piece up on up.bench_entry_id = bu.bench_entry_id and up.line = bu.line
),
first_offer as (
    select op.piece_id, min(d.doc_date) as offered_on
    from offer_piece op
    join document d on d.id = op.offer_id
    group by op.piece_id
),
last_sale as (
    select sp.piece_id, max(d.doc_date) as sold_on
    from sale_piece sp
    join document d on d.id = sp.sale_id
    group by sp.piece_id
)
select p.id as piece_id,
       cast(coalesce(i.purchase_minor, 0) as bigint) as purchase_minor,
       cast(coalesce(i.supplies_minor, 0) as bigint) as supplies_minor,
       cast(coalesce(i.regrouped_minor, 0) as bigint) as regrouped_minor,
       cast(coalesce(i.purchase_minor, 0) + coalesce(i.supplies_minor, 0) + coalesce(i.regrouped_minor, 0) as bigint) as landed_minor,
       cast(coalesce(i.estimated_minor, 0) as bigint) as estimated_minor,
       cast(coalesce(i.in_stock_minor, 0) as bigint) as in_stock_minor,
       cast(coalesce(i.cost_minor, 0) as bigint) as cost_minor,
       cast(coalesce(work.minutes, 0) as numeric(18, 2)) as minutes,
       cast(coalesce(sold.sales_minor, 0) as bigint) as sales_minor,
       cast(coalesce(sold.shipping_minor, 0) as bigint) as shipping_minor,
       cast(coalesce(sold.refunds_minor, 0) as bigint) as refunds_minor,
       cast(coalesce(sold.fees_minor, 0) as bigint) as fees_minor,
       cast(coalesce(sold.postage_minor, 0) as bigint) as postage_minor,
       cast(coalesce(sold.sales_minor, 0) + coalesce(sold.shipping_minor, 0) - coalesce(sold.refunds_minor, 0)
            - coalesce(sold.fees_minor, 0) - coalesce(sold.postage_minor, 0) - coalesce(i.cost_minor, 0) as bigint) as profit_minor,
       waiting.piece_id is not null as uncosted,
       s.found_on,
       first_offer.offered_on,
       case when s.state = 'SOLD' then last_sale.sold_on end as sold_on
from piece p
join piece_state s on s.piece_id = p.id
left join into_piece i on i.piece_id = p.id
left join work on work.piece_id = p.id
left join sold on sold.piece_id = p.id
left join waiting on waiting.piece_id = p.id
left join first_offer on first_offer.piece_id = p.id
left join last_sale on last_sale.piece_id = p.id;
