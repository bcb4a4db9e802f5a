-- Where each offer stands: live, ended or sold. Whether it is paused depends on the day and is asked from offer_pause.
-- A set is one event: the offer is sold with the first of its pieces. Nothing is written to an offer by a sale, so
-- undoing the sale makes it live again. An offer of a piece that is gone has ended on the day it went; of several, the
-- first. piece_state and offer_spell go by the same rule.

-- Made anew with piece_state, which it reads.

drop view if exists offer_state cascade;

create view offer_state as
with sold as (
    select op.offer_id, min(ds.doc_date) as sold_on
    from offer_piece op
    join offer o on o.id = op.offer_id
    join document d on d.id = op.offer_id
    join sale_piece sp on sp.piece_id = op.piece_id
    join document ds on ds.id = sp.sale_id
    where ds.doc_date >= d.doc_date and (o.ended_on is null or ds.doc_date <= o.ended_on)
    group by op.offer_id
),
gone as (
    select op.offer_id, min(s.since) as gone_on
    from offer_piece op
    join document d on d.id = op.offer_id
    join piece_state s on s.piece_id = op.piece_id
    where s.state = 'GONE' and s.since >= d.doc_date
    group by op.offer_id
),
priced as (
    select opr.offer_id, opr.price_minor,
           row_number() over (partition by opr.offer_id order by opr.valid_from) as from_first,
           row_number() over (partition by opr.offer_id order by opr.valid_from desc) as from_last
    from offer_price opr
)
select o.id as offer_id,
       d.doc_date as started_on,
       case
           when sold.offer_id is not null then 'SOLD'
           when o.ended_on is not null or gone.offer_id is not null then 'ENDED'
           else 'LIVE'
       end as state,
       case
           when sold.offer_id is not null then sold.sold_on
           when o.ended_on is not null then o.ended_on
           else gone.gone_on
       end as ended_on,
       first_price.price_minor as first_price_minor,
       last_price.price_minor as price_minor
from offer o
join document d on d.id = o.id
left join sold on sold.offer_id = o.id
left join gone on gone.offer_id = o.id
left join priced first_price on first_price.offer_id = o.id and first_price.from_first = 1
left join priced last_price on last_price.offer_id = o.id and last_price.from_last = 1;
