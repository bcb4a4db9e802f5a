-- Made anew with all views: ${views}

-- Where each offer stands: live, ended or sold. Whether it is paused depends on the day and is asked from offer_pause.
-- A set is one event: the offer is sold with the first of its pieces. Nothing is written to an offer by a sale, so
-- undoing the sale makes it live again. An offer of a piece that is gone has ended on the day it went; of several, the
-- first. piece_state and offer_spell take it from here.

drop view if exists offer_state_anew cascade;

create view offer_state_anew as
select x.offer_id,
       x.started_on,
       case
           when x.sold_on <= coalesce(x.withdrawn_on, x.sold_on) then 'SOLD'
           when x.withdrawn_on is not null or x.gone_on is not null then 'ENDED'
           else 'LIVE'
       end as state,
       case
           when x.sold_on <= coalesce(x.withdrawn_on, x.sold_on) then x.sold_on
           else coalesce(x.withdrawn_on, x.gone_on)
       end as ended_on,
       -- What never happened is put far away: of nothing and a day, the databases do not agree on the least.
       nullif(least(coalesce(x.withdrawn_on + 1, date '9999-12-31'), coalesce(x.sold_on, date '9999-12-31'),
                    coalesce(x.gone_on, date '9999-12-31')), date '9999-12-31') as until_day,
       x.first_price_minor,
       x.price_minor
from (select o.id as offer_id,
             d.doc_date as started_on,
             o.ended_on as withdrawn_on,
             (select min(sd.doc_date)
              from offer_piece op
              join sale_piece sp on sp.piece_id = op.piece_id
              join document sd on sd.id = sp.sale_id
              where op.offer_id = o.id and sd.doc_date >= d.doc_date) as sold_on,
             -- A piece that went twice went the last time.
             (select min(g.gone_on)
              from offer_piece op
              join piece_going g on g.piece_id = op.piece_id
              where op.offer_id = o.id and g.gone_on >= d.doc_date
                and not exists (select 1 from piece_going later
                                where later.piece_id = g.piece_id and later.gone_on > g.gone_on)) as gone_on,
             (select opr.price_minor from offer_price opr
              where opr.offer_id = o.id
              order by opr.valid_from fetch first 1 row only) as first_price_minor,
             (select opr.price_minor from offer_price opr
              where opr.offer_id = o.id
              order by opr.valid_from desc fetch first 1 row only) as price_minor
      from touched_offer t
      join offer o on o.id = t.offer_id
      join document d on d.id = o.id
      -- So that each is asked once, and not wherever its answer is used.
      offset 0 rows) x;
