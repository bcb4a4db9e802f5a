-- How the surface was made ready before a finish failed, and in which later entry it was done again.
alter table bench_mishap add column preparation varchar(200) default '' not null;
alter table bench_mishap add column reworked_in uuid;
alter table bench_mishap add constraint bench_mishap_rework_fk
    foreign key (reworked_in) references bench_entry (id) on delete set null;
