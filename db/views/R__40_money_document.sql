-- Made anew with all views: ${views}

-- Money documents that belong to no piece, in one list. `flow` says whether money came in, went out, or neither: a move
-- between two places, or a trip, which the owner's own car pays for and whose amount is what the books say. A count of the cash box is listed with what it
-- found over or short, not with what was counted.

drop view if exists money_document cascade;

create view money_document as
select d.id, d.doc_date, d.note, 'expenses' as kind, 'OUT' as flow,
       e.category, e.payee as title, mp.name as place, e.amount_minor
from expense e
join document d on d.id = e.id
join money_place mp on mp.id = e.place_id
union all
select d.id, d.doc_date, d.note, 'trips', 'NONE',
       null, t.purpose || ': ' || t.start_place || ' – ' || t.destination, '',
       coalesce(p.amount_minor, 0)
from trip t
join document d on d.id = t.id
left join posting p on p.document_id = t.id and p.account = 'VEHICLE'
union all
select d.id, d.doc_date, d.note, 'other-income', 'IN',
       null, case when oi.payer = '' then oi.category else oi.category || ', ' || oi.payer end, mp.name, oi.amount_minor
from other_income oi
join document d on d.id = oi.id
join money_place mp on mp.id = oi.place_id
union all
select d.id, d.doc_date, d.note, 'owner-money', om.direction,
       null, '', mp.name, om.amount_minor
from owner_money om
join document d on d.id = om.id
join money_place mp on mp.id = om.place_id
union all
select d.id, d.doc_date, d.note, 'money-moves', 'NONE',
       null, '', f.name || ' → ' || t.name, mm.amount_minor
from money_move mm
join document d on d.id = mm.id
join money_place f on f.id = mm.from_place_id
join money_place t on t.id = mm.to_place_id
union all
select d.id, d.doc_date, d.note, 'sales-tax-paid', 'OUT',
       null, stp.period, mp.name, stp.amount_minor
from sales_tax_paid stp
join document d on d.id = stp.id
join money_place mp on mp.id = stp.place_id
union all
select d.id, d.doc_date, d.note, 'till-counts',
       case when p.amount_minor > 0 then 'IN' when p.amount_minor < 0 then 'OUT' else 'NONE' end,
       null, '', mp.name, coalesce(abs(p.amount_minor), 0)
from till_count tc
join document d on d.id = tc.id
join money_place mp on mp.id = tc.place_id
left join posting p on p.document_id = tc.id and p.account = 'MONEY';
