-- Made anew with all views: ${views}

-- The log of trips: what each came to by the books, its vehicle, and how much was bought on it. A trip that names no vehicle
-- is one of the only vehicle, where there is just one.

drop view if exists trip_log cascade;

create view trip_log as
select d.id, d.doc_date, d.note, t.purpose, t.start_place, t.destination, t.miles, t.rate_tenths,
       coalesce(t.vehicle_id, only_one.id) as vehicle_id, v.name as vehicle,
       coalesce(p.amount_minor, 0) as amount_minor,
       (select count(*) from receipt r where r.trip_id = t.id) as receipts
from trip t
join document d on d.id = t.id
left join posting p on p.document_id = t.id and p.account = 'VEHICLE'
left join vehicle only_one on (select count(*) from vehicle) = 1
left join vehicle v on v.id = coalesce(t.vehicle_id, only_one.id);
