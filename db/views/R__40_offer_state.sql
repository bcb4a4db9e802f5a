-- Made anew with all views: ${views}

-- Where each offer stands: live, ended or sold. Whether it is paused depends on the day and is asked from offer_pause.
-- A set is one event: the offer is sold with the first of its pieces. Nothing is written to an offer by a sale, so
-- undoing the sale makes it live again. An offer of a piece that is gone has ended on the day it went; of several, the
-- first. piece_state and offer_spell go by the same rule.

drop view if exists offer_state cascade;

-- Gathered in one pass, as sale_part is.
create view offer_state as
with ending as (
    select op.offer_id, ds.doc_date as sold_on, cast(null as date) as gone_on
    from offer_piece op
    join offer o on o.id = op.offer_id
    join document d on d.id = op.offer_id
    join sale_piece sp on sp.piece_id = op.piece_id
    join document ds on ds.id = sp.sale_id
    where ds.doc_date >= d.doc_date and (o.ended_on is null or ds.doc_date <= o.ended_on)
    union all
    select op.offer_id, null, s.since
    from piece_state s
    left join offer_piece op on op.piece_id = s.piece_id
    left join document d on d.id = op.offer_id
    where s.state = 'GONE' and s.since >= d.doc_date
    union all
    select o.id, null, null
    from offer o
),
first_over as (
    select offer_id, min(sold_on) as sold_on, min(gone_on) as gone_on
    from ending
    group by offer_id
)
select f.offer_id,
       d.doc_date as started_on,
       case
           when f.sold_on is not null then 'SOLD'
           when o.ended_on is not null or f.gone_on is not null then 'ENDED'
           else 'LIVE'
       end as state,
       coalesce(f.sold_on, o.ended_on, f.gone_on) as ended_on,
       (select opr.price_minor from offer_price opr
        where opr.offer_id = f.offer_id
        order by opr.valid_from fetch first 1 row only) as first_price_minor,
       (select opr.price_minor from offer_price opr
        where opr.offer_id = f.offer_id
        order by opr.valid_from desc fetch first 1 row only) as price_minor
from first_over f
left join offer o on o.id = f.offer_id
left join document d on d.id = f.offer_id;
