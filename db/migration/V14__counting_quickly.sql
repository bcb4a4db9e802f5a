-- Counting many supplies quickly, and what counts tell about her own measures.

-- What is missing at a count was wasted and is not shared over the uses (null as no: counts from before); and the step in which it was counted, in the
-- supply's base unit (a quarter of a jar), null where it was measured.
alter table supply_count add column waste boolean;
alter table supply_count add column step_quantity numeric(30, 14);
alter table supply_count add constraint supply_count_step_ck check (step_quantity > 0);

-- To count by weighing: what the empty container weighs, in g, and what one ml weighs, in g.
alter table supply add column empty_grams numeric(30, 14);
alter table supply add column grams_per_ml numeric(30, 14);
alter table supply add constraint supply_empty_grams_ck check (empty_grams > 0);
alter table supply add constraint supply_grams_per_ml_ck check (grams_per_ml > 0);

-- Her own measure was found to be another size: from that day on it is the new one; entries before it keep the old.
create table supply_measure_change (
    supply_id uuid not null,
    name varchar(60) not null,
    from_day date not null,
    was_quantity numeric(30, 14) not null,
    now_quantity numeric(30, 14) not null,
    constraint supply_measure_change_pk primary key (supply_id, name, from_day),
    constraint supply_measure_change_supply_fk foreign key (supply_id) references supply (id),
    constraint supply_measure_change_was_ck check (was_quantity > 0),
    constraint supply_measure_change_now_ck check (now_quantity > 0)
);
