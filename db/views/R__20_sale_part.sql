-- What each thing on a sale earned and cost. What belongs to a sale as a whole (postage, shipping given back, fee
-- returned) is shared over its things by price, equally where every price is zero; running totals are rounded and
-- their differences taken, so that the shares add up to the cent. Every thing sold has its row, also one that was given
-- for nothing and cost nothing, of which no posting tells; two lines of one supply are one row.

drop view if exists sale_part cascade;

create view sale_part as
with part as (
    select p.sale_id,
           p.piece_id,
           p.supply_id,
           cast(-sum(case when p.account = 'SALES' then p.amount_minor else 0 end) as bigint) as price_minor,
           cast(-sum(case when p.account = 'SHIPPING_CHARGED' then p.amount_minor else 0 end) as bigint) as shipping_minor,
           cast(sum(case when p.account = 'FEES' then p.amount_minor else 0 end) as bigint) as fee_minor,
           cast(sum(case when p.account = 'COST_OF_RETAIL' then p.amount_minor else 0 end) as bigint) as retail_minor
    from (select s.id as sale_id, po.piece_id, po.supply_id, po.account, po.amount_minor
          from posting po
          join sale s on s.id = po.document_id
          where po.piece_id is not null or po.supply_id is not null
          union all
          select sp.sale_id, sp.piece_id, cast(null as uuid), 'SALES', 0
          from sale_piece sp
          union all
          select sl.sale_id, cast(null as uuid), sl.supply_id, 'SALES', 0
          from sale_line sl
          where sl.supply_id is not null) p
    group by p.sale_id, p.piece_id, p.supply_id
),
whole as (
    select p.origin_id as sale_id,
           sum(case when p.account = 'POSTAGE' then p.amount_minor else 0 end) as postage_minor,
           sum(case when p.account = 'REFUNDS' then p.amount_minor else 0 end) as refund_minor,
           sum(case when p.account = 'FEES' then p.amount_minor else 0 end) as fee_minor
    from posting p
    where p.origin_id is not null and p.piece_id is null and p.supply_id is null
      and p.account in ('POSTAGE', 'REFUNDS', 'FEES')
    group by p.origin_id
),
given_back as (
    select p.origin_id as sale_id, p.piece_id, p.supply_id,
           cast(sum(case when p.account = 'REFUNDS' then p.amount_minor else 0 end) as bigint) as refund_minor
    from posting p
    where p.account = 'REFUNDS' and p.origin_id is not null and (p.piece_id is not null or p.supply_id is not null)
    group by p.origin_id, p.piece_id, p.supply_id
),
-- Cost that reaches a piece after it was sold, and cost taken back by a return, belong to the last sale before.
piece_cost as (
    select cost.sale_id, cost.piece_id, cast(sum(cost.amount_minor) as bigint) as cost_minor
    from (select p.piece_id,
                 p.amount_minor,
                 (select d.id
                  from sale_piece sp
                  join document d on d.id = sp.sale_id
                  where sp.piece_id = p.piece_id and d.doc_date <= p.doc_date
                  order by d.doc_date desc, d.id desc
                  fetch first 1 row only) as sale_id
          from posting p
          where p.account = 'COST_OF_PIECES') cost
    group by cost.sale_id, cost.piece_id
),
retail_back as (
    select p.origin_id as sale_id, p.supply_id, cast(sum(p.amount_minor) as bigint) as cost_minor
    from posting p
    where p.account = 'COST_OF_RETAIL' and p.origin_id is not null
    group by p.origin_id, p.supply_id
),
weighed as (
    select part.*,
           case when sum(part.price_minor) over (partition by part.sale_id) = 0 then 1 else part.price_minor end as weight,
           coalesce(cast(part.piece_id as varchar(40)), cast(part.supply_id as varchar(40))) as sort
    from part
),
placed as (
    select weighed.*,
           cast(sum(weight) over (partition by sale_id) as numeric(30, 4)) as weights,
           cast(sum(weight) over (partition by sale_id order by sort rows unbounded preceding) as numeric(30, 4)) as upto
    from weighed
)
select placed.sale_id,
       placed.piece_id,
       placed.supply_id,
       placed.price_minor,
       placed.shipping_minor,
       cast(placed.fee_minor
            + round(coalesce(whole.fee_minor, 0) * upto / weights, 0)
            - round(coalesce(whole.fee_minor, 0) * (upto - weight) / weights, 0) as bigint) as fee_minor,
       cast(round(coalesce(whole.postage_minor, 0) * upto / weights, 0)
            - round(coalesce(whole.postage_minor, 0) * (upto - weight) / weights, 0) as bigint) as postage_minor,
       cast(coalesce(given_back.refund_minor, 0)
            + round(coalesce(whole.refund_minor, 0) * upto / weights, 0)
            - round(coalesce(whole.refund_minor, 0) * (upto - weight) / weights, 0) as bigint) as refund_minor,
       cast(coalesce(piece_cost.cost_minor, 0) + placed.retail_minor
            + coalesce(retail_back.cost_minor, 0) as bigint) as cost_minor
from placed
left join whole on whole.sale_id = placed.sale_id
left join given_back on given_back.sale_id = placed.sale_id
    and (given_back.piece_id = placed.piece_id or given_back.supply_id = placed.supply_id)
left join piece_cost on piece_cost.sale_id = placed.sale_id and piece_cost.piece_id = placed.piece_id
left join retail_back on retail_back.sale_id = placed.sale_id and retail_back.supply_id = placed.supply_id;
